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
//   - ottermoss-broken: the spring of 2024 with two cells that a hurried typist
//     got wrong, one of them after a quoted line break.
//   - tiny: five batches in round numbers, every figure workable by hand.
//   - poor/sowings-only, poor/third-blank, poor/yearly-bill: books that lack
//     most of what traybook can use.
//   - checks/c15, checks/c16, checks/c17: the trade's own worked sums about the
//     cost of a transplant and the payback of a tray, entered as books.
package main
