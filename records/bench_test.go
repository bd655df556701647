package records

import (
	"fmt"
	"strings"
	"testing"
	"testing/fstest"
)

// bigBook writes a book of so many sowings, with two counts, a look and a row of
// plants out for each.
func bigBook(sowings int) fstest.MapFS {
	logs := map[string]*strings.Builder{}
	add := func(name, format string, args ...any) {
		if logs[name] == nil {
			logs[name] = &strings.Builder{}
		}
		fmt.Fprintf(logs[name], format+"\n", args...)
	}
	add("trays.csv", "tray,kind,cells,cell_ml,bought,count,price")
	add("lots.csv", "lot,crop,variety,germ_label,price")
	add("sowings.csv", "batch,sown,crop,variety,lot,tray,trays,planned,wanted,set_out,plants_out,surplus,note")
	add("counts.csv", "batch,date,tray,cells,emerged,empty,lost,cause,note")
	add("scores.csv", "batch,date,looked,usable,s1,s2,s3,s4,s5,score,note")
	add("out.csv", "batch,date,plants,to,last,money,note")
	add("costs.csv", "date,from,until,category,task,amount,hours,batch,note")
	for i := range 20 {
		add("trays.csv", "T%d,air-pruning,50,100,2015-01-01,%d,12.50", i, 5000)
	}
	for i := range 200 {
		add("lots.csv", "L%d,crop %d,variety %d,90,12", i, i%20, i)
	}
	for i := range sowings {
		sown := NewDate(2016, 1, 10) + Date(i*8/10)
		lot := i % 200
		add("sowings.csv", "B%d,%s,crop %d,variety %d,L%d,T%d,2,%s,80,,,,\"sown, late\"", i, sown, lot%20, lot, lot, i%20, sown+40)
		add("counts.csv", "B%d,%s,,,%d,,,,", i, sown+5, 40+i%20)
		add("counts.csv", "B%d,%s,,,%d,,,,", i, sown+9, 70+i%20)
		add("scores.csv", "B%d,%s,20,%d,,,,,,,", i, sown+40, 15+i%5)
		add("out.csv", "B%d,%s,%d,field,yes,,", i, sown+42, 60+i%20)
		if i%5 == 0 {
			add("costs.csv", "%s,,,mix,,%d.50,,B%d,", sown, i%90, i)
		}
	}
	folder := fstest.MapFS{}
	for name, s := range logs {
		folder[name] = &fstest.MapFile{Data: []byte(s.String())}
	}
	return folder
}

func TestBigBookIsClean(t *testing.T) {
	b, problems := Load(bigBook(500))
	if len(problems) > 0 || len(b.Sowings) != 500 || len(b.Counts) != 1000 {
		t.Error(len(b.Sowings), problems)
	}
}

// BenchmarkLoad reads a book of 5,000 sowings, 26,000 rows in all.
func BenchmarkLoad(b *testing.B) {
	folder := bigBook(5000)
	for b.Loop() {
		if _, problems := Load(folder); len(problems) > 0 {
			b.Fatal(problems[0])
		}
	}
}
