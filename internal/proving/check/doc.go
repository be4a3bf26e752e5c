// Package check holds the published figures that the library is tested on, as
// tables that a machine can read, and the runner that holds a function to them.
//
// A table is a CSV file in tables/, embedded in the package. A [Claim] says
// which function must reproduce which published column; [Run] makes one
// subtest of every row, so that go test -v reads as a list of worked checks,
// and [Evaluate] gives the same result to a program. [WriteFigures] writes them
// for programs in other languages. [Orphans] lists the
// published figures that nothing claims yet.
//
// # The header of a table
//
// Lines that start with a number sign, in this order:
//
//	# id: sap-example
//	# title: Density of two invented liquids
//	# source: title, year, table or equation
//	# key: kell-1975, icumsa-sps4
//	# obtained: read
//	# kind: figures
//	# column brix: input % sugar by mass
//	# column density: want kg/m3 at 20 C
//	# column note: text - why a row is special
//	# tolerance density: half-digit + 0.006: printed digit, and the fit's stated error
//	# note: basis: density in vacuum; the temperature scale of 1990
//	# note: anything a reader must know; may be repeated
//
// Then one line with the column names and one line for every row.
//
// The id is the file's name without its ending. Obtained starts with one of
// read (seen in a public copy of the source), computed (from the formula that
// the source line names), memory (recalled, not seen again), common practice
// (a fact of the trade without a source), or it is "by row" and a text column
// named obtained starts with one of these in every row. Subtests of rows
// obtained from memory carry those words in their name.
//
// Key gives the sources as bibliography.json calls them, the one in which the
// figures were found first, or is none where geometry or a definition is all. A
// text column named key gives the one of each row. The note that begins with basis says what a figure stands on: molar
// masses, weights in air or in vacuum, which milliliter, which scale. A table that
// was computed must have one.
//
// Kind is figures for a table with figures to reproduce, or facts for
// statements that nothing computes, such as cautions; numbers in a table of
// facts are inputs.
//
// # Columns
//
// The words after a column's name are its kind, its unit and a description. The
// unit is 1 for a pure number and - for text; US gal and 1000 taps are units of
// two words. Where another column of the row tells it, the unit is the word
// unit, and the description says "see the column NAME" unless that column is
// called unit. The kinds are:
//
//   - input, a number that the function is given or that the row states;
//   - want, a published number that a function must reproduce;
//   - deviation, named after a want column with _deviation added: a
//     documented disagreement, so that the function must give the published
//     figure plus the deviation;
//   - text, words.
//
// An empty cell in a column of numbers is allowed: an input that does not apply
// (NaN) or a figure that the source does not print (passed over).
//
// The columns to the left of the first want column name the row: inputs as
// name=value, texts as they stand, empty cells left out. A table of facts names
// its rows by the first column. Names are unique within a table.
//
// # Tolerances
//
// Every want column has one, and its reason. It is a sum of these terms:
//
//	half-digit   half a unit in the last printed digit of the cell
//	0.006        a number in the unit of the column
//	0.5%         a share of the published figure
//
// Half-digit reads the text of the cell, so 1.0 and 1.00 differ; write a
// figure exactly as the source prints it. In a row with a deviation it reads
// the deviation, since the disagreement is what was documented there. To the
// printed digit add only what the source states as the error of its fit, or a
// documented difference between two scales. A tolerance is never widened until
// a test passes: when a published figure and the library disagree, the row
// says by how much in the deviation column and why in a note, and the test
// then fails when the disagreement changes.
//
// # Adding a table
//
// Write the file, one published figure a row where the source is prose; bind
// its want columns with claims; run the tests. The loader names the file and
// the line of anything it does not accept.
package check
