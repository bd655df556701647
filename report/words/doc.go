// Package words writes figures down: numbers, units, dates, plurals and ranges, each
// in one way for pages, charts and charts' descriptions, so that they never differ.
//
// Task: a value goes in, plain text comes out (no markup). Nothing is computed here
// but what rounding needs. Shares are whole percent, money a plant tenths of the
// smallest coin's unit, days halves; a figure that is missing is a dash or words, never 0.
//
// The files: number.go (numbers and percent), plural.go (numbers with a word),
// rate.go (intervals), money.go, date.go (days, and how many days late), degrees.go;
// append.go writes the same into a buffer, for pages of many numbers.
package words
