package records

import "testing"

// A column's name in the many ways in which it is written, and what is not it.
func TestCanonicalHeader(t *testing.T) {
	for _, c := range []struct{ log, written, want string }{
		{"trays.csv", "Cell ML", "cell_ml"}, {"trays.csv", "cell_ml (ml)", "cell_ml"}, {"trays.csv", "Price [$]", "price"}, {"trays.csv", "price (usd)", "price"},
		{"trays.csv", "price (each)", ""}, {"trays.csv", "price (old)", ""}, {"trays.csv", "minutes (s)", ""}, {"trays.csv", "minutes (min)", "minutes"},
		{"trays.csv", "lasts (years)", "lasts"}, {"trays.csv", "lasts (months)", ""}, {"trays.csv", "count (#)", "count"}, {"trays.csv", "()", ""},
		{"lots.csv", "germ_label (%)", "germ_label"}, {"lots.csv", "grams (kg)", ""}, {"lots.csv", "bought (yyyy-mm-dd)", "bought"},
		{"chamber.csv", "temp [°F]", "temp"}, {"chamber.csv", "Temp (C)", "temp"}, {"chamber.csv", "temp (K)", ""}, {"costs.csv", "hours (h)", "hours"},
		{"costs.csv", "amount (net)", ""}, {"costs.csv", "amount (EUR)", "amount"}, {"counts.csv", "emerged\n", "emerged"},
	} {
		if got := canonicalHeader(c.written, logOf(c.log)); got != c.want {
			t.Errorf("%s: %q is %q, want %q", c.log, c.written, got, c.want)
		}
	}
}

// Words for a column that are not its name are asked about, once each, and only where
// the column itself is missing.
func TestMeantColumns(t *testing.T) {
	for _, c := range []struct{ log, written, want string }{
		{"sowings.csv", "Left over", "surplus"}, {"sowings.csv", "set out on", "set_out"}, {"sowings.csv", "plants out (all)", "plants_out"},
		{"sowings.csv", "wantd", "wanted"}, {"sowings.csv", "bed", ""}, {"sowings.csv", "seed", ""}, {"sowings.csv", "weather", ""},
		{"trays.csv", "Price each", "price"}, {"trays.csv", "cost", "price"}, {"trays.csv", "Qty.", "count"}, {"trays.csv", "shelf", ""},
		{"counts.csv", "Came up", "emerged"}, {"counts.csv", "Dead", "lost"}, {"house.csv", "Outside low", "out_low"}, {"house.csv", "max", "high"},
		{"out.csv", "sold for", ""}, {"chamber.csv", "RH (%)", "humidity"},
	} {
		var all []string
		for _, column := range logOf(c.log).Columns {
			all = append(all, column.Name)
		}
		if got := logOf(c.log).meant(c.written, all); got != c.want {
			t.Errorf("%s: %q is taken for %q, want %q", c.log, c.written, got, c.want)
		}
	}
	_, problems := load(map[string]string{"sowings.csv": oneSowing, "trays.csv": "tray,kind,cells,price,Price each\nA50,air-pruning,50,12,10\n"})
	if len(problems) > 0 {
		t.Errorf("the column is there, and the other is the farm's own: %v", problems)
	}
}

// Columns that are not the format's are listed as written; where the names begin, and
// how meanings are written, is a matter of the tables.
func TestUnreadColumns(t *testing.T) {
	b, _ := load(map[string]string{"sowings.csv": "Row,batch,sown,crop,variety,tray,trays, Weather ,\n1,A,2025-03-03,lettuce,Fenwimple,A50,2,wet,\n"})
	if got := b.Files[0].Unread; len(got) != 2 || got[0] != "Row" || got[1] != "Weather" {
		t.Errorf("%q", got)
	}
	for log, words := range meanings {
		for word, column := range words {
			if logOf(log).column(column) < 0 || foldHeader(word) != word || canonicalHeader(word, logOf(log)) != "" {
				t.Errorf("%s: %q cannot mean %q", log, word, column)
			}
		}
	}
}
