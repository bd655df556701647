package records

// Maybe is a value that may not have been written down. The zero value is
// unknown: a blank is never 0.
type Maybe[T any] struct {
	Value T
	Known bool
}

// Known wraps a value that is known.
func Known[T any](v T) Maybe[T] { return Maybe[T]{Value: v, Known: true} }

// Or returns the value, or other where it is unknown.
func (m Maybe[T]) Or(other T) T {
	if m.Known {
		return m.Value
	}
	return other
}
