// Package lookagain finds the rows of a record that a person should see again
// before money is paid or syrup is counted by them. Nothing is mended: a row that
// is found may be right, and a row that is not found may be wrong.
//
// Rows go into a [List], one by one, in any order; [List.Findings] then tells:
//
//   - rows that are the same as an earlier one;
//   - a strength, volume or price far from what its name usually has;
//   - days far from the season of the other rows;
//   - names that differ by a letter, by capitals, by a sign that is not seen or by
//     one that looks like another;
//   - syrup that was packed on a day before it was drawn.
//
// # What is far
//
// Of the values x of one name, with their median m and the median d of all |x-m|,
// one is far if it differs from m by more than 3.5 times 1.4826 d, and is also
// outside a band of m: half to one and a half for strengths, a tenth to three
// times for volumes, half to twice for prices. 1.4826 d is the standard deviation
// of normal errors, and 3.5 a usual bound (Iglewicz and Hoaglin 1993, from memory).
// The band keeps values that hardly scatter, as they do when d is nothing, from
// being found for a trifle. It is this package's choice: a point that slipped by
// one place is a factor of ten, and strengths of one bush fall by half in a spring.
// A name with fewer than five values is held against the values of all names. With
// fewer than three of these a strength above 6 Brix is found: sap runs at 1 to 4.
//
// Strengths of a list of syrup are held against syrup alone: rules allow 66 to
// 68.9 Brix, and below 60 or above 72 one is found. What stands a few Brix beside
// the rule happens, and is for the page that mends it.
//
// A day is far from the median day if it is more than 60 days away, and more than
// 3.5 times 1.4826 d. Sap runs for six to ten weeks (common practice).
//
// # How much is held
//
// A List keeps about 50 bytes a row and each name once. Time grows as n log n:
// names are compared by what is left of them without one letter. Those of 4 to 80
// letters are; 2,000,000 such remainders are held, of 80,000 names of 24 letters,
// and a finding tells of the names that were left out then.
//
// Cites iglewicz-hoaglin-1993.
//
// In the book: docs/theory/units.md derives the formulas and says what they leave out,
// docs/cookbook.md answers what a maker asks.
package lookagain
