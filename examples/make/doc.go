// Command make writes the example record books that stand beside it:
//
//	go run ./examples/make
//
// It is seeded: the same program always writes the same bytes, and a test
// proves that the committed logs are what it writes. Farm, people, suppliers
// and varieties are invented.
//
//   - ottermoss: the big book. Four seasons of a mixed farm, 2023 to 2026, the
//     last still under way on Saturday 2026-05-16; built with --today 2026-05-17.
//     Its story is made, and evidence of nothing: rates, losses and prices were set and
//     the seed chosen until the figures showed each thing a page has words for. More of
//     the heavy 128s pay even at the low end; of the heavy 72s it turns on how long the
//     thin ones last, a guess in their row; of the 50s there are too few matches. 2024
//     was cold. 2025 came up better only because easier crops were grown, in spite of a
//     week of heat and a chamber that cooked. In 2026 like sowings came up clearly
//     better, of crops that are harder to raise.
//   - ottermoss-broken: the spring of 2024 with two cells that a hurried typist
//     got wrong, one of them after a quoted line break.
//   - tiny: five batches in round numbers, every figure workable by hand.
//   - poor/sowings-only, poor/third-blank, poor/yearly-bill: books that lack
//     most of what traybook can use.
//   - checks/c15, checks/c16, checks/c17: the trade's own worked sums about the
//     cost of a transplant and the payback of a tray, entered as books.
package main
