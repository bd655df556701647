// Package data holds the data files of a review: every figure of a report as
// plain tables.
package data
