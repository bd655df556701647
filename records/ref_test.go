package records

import (
	"math/rand/v2"
	"slices"
	"testing"
	"testing/fstest"
)

// What order names is put in that order, and nothing is lost.
func TestReorder(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	for n := range 40 {
		var is, want []int
		var order []int32
		for _, i := range rng.Perm(n) {
			is, order = append(is, 100+len(is)), append(order, int32(i))
		}
		for _, i := range order {
			want = append(want, is[i])
		}
		if reorder(is, order); !slices.Equal(is, want) {
			t.Fatalf("got %v, want %v", is, want)
		}
	}
}

// Counts stand by batch, day and tray, however the file has them; each keeps its batch,
// its words and its place, and those left out are gone.
func TestCountsStandByBatch(t *testing.T) {
	b, problems := Load(fstest.MapFS{
		"sowings.csv": {Data: []byte("batch,sown,crop,variety,tray,trays,cells\nA,2025-03-01,kale,Orl,T,2,100\nB,2025-03-01,kale,Orl,T,2,100\n")},
		"counts.csv": {Data: []byte("batch,date,tray,emerged,lost,cause,note\nB,2025-03-12,1,40,,,\nA,2025-03-12,2,30,1,mice,\nB,2025-03-10,2,20,,,wet\n" +
			"A,2025-03-12,1,many,,,\nnobody,2025-03-12,1,4,,,\nB,2025-03-10,1,10,,mice,\nA,2025-03-08,2,31,,,\n")},
	})
	var got []string
	for i := range b.Counts {
		c := &b.Counts[i]
		said := b.Said(c)
		got = append(got, b.Code(c.Batch)+" "+c.Date.String()+" "+itoa(int(c.Tray.Value))+" "+said.Cause+said.Note+" line "+itoa(int(c.Line)))
	}
	want := []string{"A 2025-03-08 2  line 8", "A 2025-03-12 2 mice line 3", "B 2025-03-10 1 mice line 7", "B 2025-03-10 2 wet line 4", "B 2025-03-12 1  line 2"}
	if !slices.Equal(got, want) {
		t.Errorf("got  %q\nwant %q\n%v", got, want, problems)
	}
}

// A book made in Go finds a code again, and names none where there is none.
func TestRef(t *testing.T) {
	b := &Book{}
	a, z := b.Ref("a"), b.Ref("z")
	if a == z || b.Ref("a") != a || b.Code(z) != "z" || b.Ref("") != 0 || b.Code(0) != "" {
		t.Errorf("%d, %d", a, z)
	}
	c := &Count{}
	if b.Say(c, Said{Cause: "mice"}); b.Said(c).Cause != "mice" || b.Said(&Count{}) != (Said{}) {
		t.Error("words are lost")
	}
	read, _ := Load(fstest.MapFS{"sowings.csv": {Data: []byte("batch,sown,crop,variety,tray,trays\nA,2025-03-01,kale,Orl,T,2\n")}})
	if read.Code(read.Ref("A")) != "A" {
		t.Error("a code that was read is not found")
	}
}
