package booktest

import (
	"math"
	"reflect"
	"testing"

	"traybook/records"
)

// Near fails where a number lies further from the one wanted than allowed, or is none.
func Near(t testing.TB, what string, got, want, within float64) {
	t.Helper()
	if !(math.Abs(got-want) <= within) {
		t.Errorf("%s: got %v, want %v", what, got, want)
	}
}

// Known fails where a figure is missing or is not the one wanted.
func Known(t testing.TB, what string, got records.Maybe[float64], want, within float64) {
	t.Helper()
	if !got.Known {
		t.Errorf("%s: missing, want %v", what, want)
		return
	}
	Near(t, what, got.Value, want, within)
}

// Missing fails where a figure is known that must not be.
func Missing(t testing.TB, what string, got records.Maybe[float64]) {
	t.Helper()
	if got.Known {
		t.Errorf("%s: got %v, want none", what, got.Value)
	}
}

// Find returns the one row that is asked for.
func Find[T any](t testing.TB, what string, rows []T, is func(T) bool) T {
	t.Helper()
	var found []T
	for _, row := range rows {
		if is(row) {
			found = append(found, row)
		}
	}
	if len(found) != 1 {
		t.Fatalf("%s: %d rows, want 1", what, len(found))
	}
	return found[0]
}

// Finite walks exported and hidden fields and fails on any number that is none:
// NaN or infinite.
func Finite(t testing.TB, v any, where string) {
	t.Helper()
	finite(t, reflect.ValueOf(v), where, map[uintptr]bool{})
}

// finite follows a value down; seen holds the pointers on the way, so that records
// that point at each other end.
func finite(t testing.TB, v reflect.Value, where string, seen map[uintptr]bool) {
	t.Helper()
	switch v.Kind() {
	case reflect.Float64:
		if f := v.Float(); math.IsNaN(f) || math.IsInf(f, 0) {
			t.Errorf("%s is %v", where, f)
		}
	case reflect.Pointer:
		if !v.IsNil() && !seen[v.Pointer()] {
			seen[v.Pointer()] = true
			finite(t, v.Elem(), where, seen)
		}
	case reflect.Struct:
		for i := range v.NumField() {
			finite(t, v.Field(i), where+"."+v.Type().Field(i).Name, seen)
		}
	case reflect.Slice, reflect.Array:
		for i := range v.Len() {
			finite(t, v.Index(i), where, seen)
		}
	case reflect.Map:
		for _, k := range v.MapKeys() {
			finite(t, v.MapIndex(k), where, seen)
		}
	}
}
