package batch

// Rows is the rows of a log by batch, those of a batch in the order of the file.
type Rows[T any] struct {
	rows  []*T
	first []int32 // the place in rows of each batch's first, and of the end
}

// RowsOf splits a log by the batch that each row names; codes are those of the batches, in
// their order. The rows stay where they are. Those of a batch that was never sown are in none.
func RowsOf[T any](codes []string, log []T, code func(*T) string) Rows[T] {
	of, first := nthOf(codes, log, code), make([]int32, len(codes)+1)
	for _, nth := range of {
		if nth >= 0 {
			first[nth+1]++
		}
	}
	for i := range codes {
		first[i+1] += first[i]
	}
	rows, next := make([]*T, first[len(codes)]), append([]int32{}, first...)
	for i, nth := range of {
		if nth >= 0 {
			rows[next[nth]] = &log[i]
			next[nth]++
		}
	}
	return Rows[T]{rows, first}
}

// Of returns the rows of the nth batch, a list that the caller may change.
func (r Rows[T]) Of(nth int) []*T { return r.rows[r.first[nth]:r.first[nth+1]:r.first[nth+1]] }

// PartsOf cuts a log into the rows of each batch, as RowsOf does. Where those of every
// batch stand together, as in a book that was read, they are parts of the log itself and
// not to be changed.
func PartsOf[T any](codes []string, log []T, code func(*T) string) [][]T {
	of, parts := nthOf(codes, log, code), make([][]T, len(codes))
	for from, to := 0, 0; from < len(log); from = to {
		for to = from + 1; to < len(log) && of[to] == of[from]; {
			to++
		}
		switch nth := of[from]; {
		case nth < 0:
		case parts[nth] != nil:
			return copied(RowsOf(codes, log, code), len(codes))
		default:
			parts[nth] = log[from:to:to]
		}
	}
	return parts
}

// copied are copies of the rows of each batch.
func copied[T any](rows Rows[T], batches int) [][]T {
	parts := make([][]T, batches)
	for nth := range parts {
		for _, row := range rows.Of(nth) {
			parts[nth] = append(parts[nth], *row)
		}
	}
	return parts
}

// nthOf is the batch of each row by its place, below 0 where it was never sown. Logs name
// a batch in row after row.
func nthOf[T any](codes []string, log []T, code func(*T) string) []int32 {
	if len(log) == 0 {
		return nil
	}
	nths, of := make(map[string]int32, len(codes)), make([]int32, len(log))
	for i, c := range codes {
		nths[c] = int32(i)
	}
	for i := range log {
		c := code(&log[i])
		if i > 0 && c == code(&log[i-1]) {
			of[i] = of[i-1]
		} else if nth, found := nths[c]; found {
			of[i] = nth
		} else {
			of[i] = -1
		}
	}
	return of
}
