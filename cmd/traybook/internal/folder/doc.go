// Package folder puts a whole folder in the place of another, so that whatever
// ends the program, the place holds the whole old one or the whole new one.
//
// # Beside the place
//
// A folder NAME is made in a hidden one beside it, .NAME.traybook, which holds
//
//	lock   held by the process at work; the system frees it when that one dies
//	new    the folder being made; after a swap in one step, the one before it
//	old    the folder before it, while a swap in two steps lasts
//
// The lock keeps two processes apart and tells what a dead one left from what a
// live one is making: who holds the lock may clear new and old.
//
// # The swap
//
// Everything in new is on the disk, not only in memory, before the swap begins. A file
// that is the same as in NAME is there already: new has it under a second name.
// Linux and macOS then exchange the two folders in one step. Where that cannot be
// done (other systems, some file systems) NAME becomes old and new becomes NAME;
// a process killed between these two leaves no NAME but a whole old, and the next
// that takes the lock, or looks by Mend, moves it back.
package folder
