// Package book makes the pages and figures of docs that are reckoned from the
// library and its tables: the validation plots, the disagreements of sources, the
// bibliography, and the season in twelve questions.
//
// [Files] returns them by name. A test at the root writes them and holds the
// tree to them:
//
//	go test -update .
package book
