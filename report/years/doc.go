// Package years sets the seasons of a farm side by side: what changed, how much of it was
// the same sowings doing better or worse and how much other varieties, trays and crops;
// and a season's heat beside its cold. It reads what the rooms before found of the batches
// and changes nothing of theirs. Its rules follow.
//
// # Year over year
//
// "We fell from 92 to 90 %" may only mean that more of a hard crop was grown. Each season
// that has a figure is compared with the one before it that has one: the farm's seasons,
// and every crop's own. The figures, and what they rest on:
//
//	emergence  emerged of cells looked at      batches of rule "Emergence"
//	usable     usable plants of cells sown     measured batches, from seed or not, of which
//	                                           the cells are known (rule "Usable plants")
//	cost       money a usable plant            ended batches with a figure of usable plants
//	                                           of any kind, those potted on taken off, as in
//	                                           rule "Cost of a transplant"
//
// Like sowings, a group, are of one crop, variety, cells and kind of tray and seeds_per_cell.
// A group of a season without a usable plant has no cost a plant: it is left out of that
// measure, said. w is the share of a season's cells, or plants, that a group has of its crop
// or a crop has of the farm, so that before and after are the pooled figures; mean is that
// of both seasons.
//
// Of a crop, over its groups:
//
//	same         sum mean(w) (after - before), over the groups in both seasons
//	other_kinds  the rest of the crop's change: other varieties and trays
//	share        sum mean(w), over the groups in both seasons
//
// Of the farm, over its crops:
//
//	same         sum mean(w) x the crop's same         }  over the crops in both seasons
//	other_kinds  sum mean(w) x the crop's other_kinds  }
//	share        sum mean(w) x the crop's share        }
//	other_crops  sum mean(rate) (w after - w before), a crop in one season alone keeping the
//	             rate it has there
//
// The three add up to the change. same is what like sowings moved the whole figure by;
// same / share is what they did on their own. Without a sowing that both seasons have, share
// and same are 0 and nothing is said of like sowings.
//
// What drove a change of the farm are the crops' parts of the three, the largest first.
// That of other_crops is (mean(rate) - the mean of the farm's before and after) (w after - w
// before): over the crops the same sum, as the weights of a season add up to 1. So a crop is
// named for growing more of it where it does better than the farm, not for being grown.
//
// Sources: Kitagawa (1955), J. Am. Stat. Assoc. 50:1168-1194; Das Gupta (1993), US Census
// Bureau P23-186, chapter 5. Tested against his Tables 2.1 and 5.1.
//
// # Interval of a change
//
// Of same, of emergence and usable plants, where any sowings are in both seasons:
//
//	same -+ t sqrt(variance)
//	variance of a crop   sum mean(w)^2 (variance before + variance after), over groups
//	variance of a farm   sum mean(w)^2 x the crop's variance
//
// A group's variance is by rule "Variance of a rate", its E with the crop's rho of the
// measure (rule "Scatter"). t is Student's: of a crop at the crop's degrees of freedom and
// the level 1 - (1 - confidence)/m, m the crops that have an interval in the measure and
// season; of the farm at the book's degrees of freedom and the level confidence. Verdicts
// are those of rule "Varieties", whatever the number of batches: clearly higher, clearly
// lower, no clear difference; too few batches where there is no interval. Cost has neither.
//
// The interval speaks of batches, not of weather or of seed, which one season's sowings have
// in common: a verdict is told as "came out clearly higher than", never with a cause, and
// beside it that two seasons cannot tell weather from work. With two earlier changes or more
// of the measure and crop that have like sowings, of cost too, n in number, it says what the
// farm's seasons usually differ by:
//
//	usual = t(0.975; n) x sqrt(mean of their (same / share)^2)
//
// A clear change with |same / share| up to that is no more than this farm's seasons differ; a
// larger one more than they usually do. The verdict keeps its word.
//
// Source: Student (1908), Biometrika 6:1-25, for t; the variance of a sum of weighted,
// independent rates, the weights taken as given, as in direct standardisation. (Simulated
// where nothing changes but varieties, trays and crops: fewer than one verdict in ten is
// clear; TestOtherKindsAreNoChange.)
//
// # A running season
//
// The book's last season runs while it is today's and not finished (rule "Seasons"). Set
// beside whole seasons it would be all early sowings. So in its comparisons, the pair of
// seasons once chosen, each side takes only the batches whose figure stood by today's day
// and month in its season: in emergence those whose last count was made by then, in usable
// those whose written end had come. A batch whose last count came later is left out whole,
// though earlier counts of it stand. 29 February is the 28th in a year that has none. What
// is left out, and how many batches are left, is said of each side. No figure left on a side:
// no row. Cost has no comparison while the season runs: its bills are half paid.
//
// # Heating and the weather
//
// So that a cold spring is told apart from waste. Of a season with a sowing:
//
//	degree_days = sum of max(0, 15 C - (out_low + out_high)/2)
//
// over the season's days in heating_months, up to today, with both outdoor readings (the last
// row of a day stands); told only where 9 in 10 of those days have them, and then scaled up
// to all of them. heat is the ledger's heat of the season (rule "Ledger"), without a row of
// it none; per_degree_day is their ratio. Where all heat rows of the book have a quantity in
// one written unit, whatever its capitals, fuel is their sum in the season, by date, and
// fuel_per_degree_day the ratio: prices change, the house does not.
//
// Sources: heating degree-days below a base temperature, common practice; the base of 15 C
// is that of rule "Heat"; the 9 in 10 are a choice of ours.
//
// In reading order: figures.go (the types, New), measure.go (what a batch counts), pool.go
// (batches added up), split.go (a change in parts), change.go (the pairs of seasons),
// running.go, interval.go (interval, verdict, what is usual), drivers.go, heating.go,
// simulated.go (how often a verdict is false).
package years
