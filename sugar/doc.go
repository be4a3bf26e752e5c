// Package sugar mends batches: what a lot of liquid holds, and what it becomes
// when lots are blended, thinned or concentrated.
package sugar
