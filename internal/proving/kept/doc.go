// Package kept holds what earlier versions wrote, and its tests hold this one to
// reading it: JSON of every type that encodes, and the CSV files that the library
// reads. It has no code.
//
// A folder is named after the version that wrote it. It has a JSON file for each
// package, with one line for each type, and CSV files. A folder is never changed
// once its version is out.
//
// To add a type or a table, add a line to the list in documents_test.go or
// tables_test.go, and run
//
//	go test ./internal/proving/kept -update
//
// which adds to the folder of this version what is not there, and changes
// nothing that is. Read what it added.
package kept
