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

Eight more heavy 128s arrived in January. Something, most likely voles, ate cucumber and squash
from the end bench in April and May. We put the trays on wire after that and set traps.

The dyed cucumber seed is treated. It stays in its own tin, we wear gloves, and none of it goes to the organic field.
`,
	"2025.md": "# 2025: heat\n\n" +
		"A week in July went over 100 F in the house, whatever we opened. The lettuce sown that week hardly came up:\n" +
		"it sleeps when it is hot. Next time we start it in the packing room.\n\n" +
		"```figure emergence\n```\n\n" +
		"Candle Cos was thin all spring, heat or not. Tobit thinks the packet was old. Also the small box stuck at 91 F\n" +
		"for a fortnight in April before anyone looked at the thermometer; the electrician has fitted a new sensor.\n\n" +
		"From this year we sow cabbage half and half in both kinds of 72.\n",
	"2026.md": `# 2026: so far

A kind spring. The Barnloft onions are from a tin that should have been thrown away and look it.
The school wants 245 Candle Cos at the end of May and two trays will hardly give that.
`,
}
