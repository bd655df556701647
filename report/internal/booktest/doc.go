// Package booktest writes record books in Go for the tests of the figures, and
// compares what comes of them: book.go builds a book row by row, farm.go makes one
// by chance, want.go holds the comparisons. It knows the records and no figure.
package booktest
