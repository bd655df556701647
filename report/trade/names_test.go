package trade

import "testing"

// Crops as growers write them: in the plural, with more in brackets, with another hyphen
// or case, by their British or American name. A word that is not listed borrows nothing.
func TestCropsAsGrowersWriteThem(t *testing.T) {
	for name, want := range map[string]string{
		"Lettuce": "lettuce", " LETTUCES ": "lettuce", "lettuce (romaine)": "lettuce", "Tomatoes": "tomato", "Tomatoes (cherry)": "tomato", "cherry tomatoes": "tomato",
		"tomato [F1]": "tomato", "courgette": "summer squash", "Courgettes": "summer squash", "zucchini": "summer squash", "Squash (winter)": "winter squash",
		"squash, winter": "winter squash", "aubergine": "eggplant", "coriander": "cilantro (coriander)", "Cilantro": "cilantro (coriander)",
		"bunching onion": "scallion (bunching onion)", "Bunching Onions": "scallion (bunching onion)", "spring onions": "scallion (bunching onion)",
		"onion (spring)": "scallion (bunching onion)", "Onion (red)": "onion", "red onions": "onion", "pak choi": "bok choy (pak-choi)", "Pak-Choi": "bok choy (pak-choi)",
		"bok choy": "bok choy (pak-choi)", "Bok choy (pak-choi)": "bok choy (pak-choi)", "beetroot": "beet", "Beets": "beet", "Swiss chard": "chard", "sweetcorn": "sweet corn",
		"capsicums": "pepper", "chillies": "pepper", "chilies": "pepper", "lady's fingers": "okra", "chiles": "pepper", "bell peppers": "pepper", "Brussels Sprout": "Brussels sprouts", "brussel sprouts": "Brussels sprouts",
		"Brussel's sprouts": "Brussels sprouts", "French beans": "bean, snap", "green bean": "bean, snap", "beans, snap": "bean, snap", "melon": "melon (muskmelon)",
		"muskmelon": "melon (muskmelon)", "cantaloupes": "melon (muskmelon)", "Florence fennel": "fennel (bulb)", "radicchio": "chicory and radicchio", "peas": "pea",
		"cabbage (Chinese)": "Chinese cabbage", "cabbages": "cabbage", "mustard": "mustard greens", "collards": "collard", "leeks": "leek", "zinnias": "zinnia (cut flower)",
		"bean": "", "squash": "", "runner beans": "", "broad bean": "", "rocket": "", "sea kale": "", "orache": "", "": "", "s": "", "(x)": "", "[": "", "onions and leeks": "",
	} {
		if got, ok := Crop(name); got.Name != want || ok != (want != "") {
			t.Errorf("%q is %q, want %q", name, got.Name, want)
		}
	}
}

// Every other name leads to a crop of some table, and to none that is itself in a table by
// that name; none is written twice, in whatever number or case.
func TestOtherNamesLeadSomewhere(t *testing.T) {
	seen := map[string]bool{}
	for _, r := range read("names.csv") {
		other, name := key(r["other"]), key(r["name"])
		_, crop := crops()[name]
		_, minimum := minimums()[name]
		_, tested := emergenceDays()[name]
		if !crop && !minimum && !tested {
			t.Errorf("%s: no table has %s", r["other"], r["name"])
		}
		if _, itself := crops()[other]; itself || other == name {
			t.Errorf("%s needs no other name", r["other"])
		}
		if seen[other] {
			t.Errorf("%s is written twice", r["other"])
		}
		seen[other] = true
	}
}

// A plural is a name's last letters only; a word that ends like one is left alone.
func TestSingular(t *testing.T) {
	for word, want := range map[string]string{"tomatoes": "tomato", "leeks": "leek", "squashes": "squash", "radishes": "radish", "spinaches": "spinach", "chicories": "chicory",
		"boxes": "box", "asparagus": "asparagus", "cress": "cress", "pea": "pea", "": ""} {
		if got := singular(word); got != want {
			t.Errorf("%s: %s, want %s", word, got, want)
		}
	}
}

// Looked up by another name the tables give the same: 24 crops of Harrington and Minges.
func TestOtherTablesTakeOtherNames(t *testing.T) {
	for name, crop := range map[string]string{"Aubergines": "eggplant", "muskmelon": "melon (muskmelon)", "radishes": "radish", "sweetcorn": "sweet corn"} {
		if got, want := EmergenceDays(name), EmergenceDays(crop); len(want) == 0 || len(got) != len(want) {
			t.Errorf("%s: %d temperatures, want %d", name, len(got), len(want))
		}
	}
	if got := Minimum("swedes"); got != Minimum("rutabaga") || !got.Known {
		t.Errorf("swedes: %v", got)
	}
}
