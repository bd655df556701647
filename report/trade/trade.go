// Package trade holds facts of the transplant trade, each with its source.
package trade
