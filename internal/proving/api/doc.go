// Package api holds api.txt, the exported API of the library packages as text,
// one line for each name. The gate prints it anew and compares, so that a change
// of the API is seen as a change of that file. After a change that is meant, from
// the root of the module:
//
//	go -C internal/tools run ./apitext -dir ../.. > internal/proving/api/api.txt
//
// To compare two states of one package, and be told which changes break
// callers, from the root of each:
//
//	go tool -modfile=internal/tools/go.mod apidiff -w ../before ./density
//	go tool -modfile=internal/tools/go.mod apidiff ../before ./density
package api
