package main

// notes are the seasons in the grower's words.
var notes = map[string]string{
	"2023.md": `# 2023: the first year in the new house

We bought heavy air-pruning trays in the autumn and wanted to know by now whether they were worth it.
One spring does not tell. What we did learn:

- In April there were never enough heavy trays. Whatever did not fit went into the thin ones,
  so we have both beside each other more often than we meant to.
- The first celery damped off to the last tray. Sown again on 21 March with the fan on, and it stood.
- In June Marla and Tobit were both at the market and a shelf of seedlings **dried out**.
`,
	"2024.md": `# 2024: cold

The spring would not come. Snow on 21 March, and the burner ran most nights into May. The propane bill
says the rest.

Eight more heavy 128s arrived in January. The spinach was short again: we promise more than its cells give.

Something, most likely voles, ate cucumber and squash from the end bench in April and May. We put the trays
on wire after that and set traps.

The dyed cucumber seed is treated. It stays in its own tin, we wear gloves, and none of it goes to the organic field.
`,
	"2025.md": "# 2025: heat\n\n" +
		"A week in July went over 100 F in the house, whatever we opened. The lettuce sown that week hardly came up:\n" +
		"it sleeps when it is hot. Next time we start it in the packing room.\n\n" +
		"Candle Cos was thin all spring, heat or not. Tobit thinks the packet was old.\n\n" +
		"The small box stuck at 98 F from 8 to 23 April before anyone looked at the thermometer. Basil, fennel and\n" +
		"pak choi cooked in it; the fennel was sown again. The electrician has fitted a new sensor.\n\n" +
		"We grew less than half the spinach and celery of last year and twice the bunching onions, and ended with more of these\n" +
		"than anyone wanted. On paper more came up than in 2024. Marla says that is the onions, not us.\n\n" +
		"From this year we sow cabbage half and half in both kinds of 72.\n\n" +
		"```figure chambers\n```\n",
	"2026.md": `# 2026: so far

A kind spring, a finer mix, and a better house than last year's. It does not show in the sum of it, because two
kitchens wanted celery, parsley, spinach and leeks, all hard to raise. The spinach ran short again, and nobody
has sown again for the celery that was lacking.

The Barnloft onions are from a tin that should have been thrown away and look it.
The school wants 245 Candle Cos in the middle of June, and two trays will not give that. The same goes for the
basil of the market's herb day.
`,
}
