package main

import (
	"fmt"
	"go/ast"
	"go/token"
	"go/types"
)

// sums name the functions of the chooser that stand for operators of arithmetic.
var sums = map[token.Token]string{
	token.ADD: "bumpedAdd", token.SUB: "bumpedSub", token.MUL: "bumpedMul", token.QUO: "bumpedQuo", token.REM: "bumpedRem",
	token.ADD_ASSIGN: "bumpedAdd", token.SUB_ASSIGN: "bumpedSub", token.MUL_ASSIGN: "bumpedMul", token.QUO_ASSIGN: "bumpedQuo", token.REM_ASSIGN: "bumpedRem",
}

// bounds name those that stand for comparisons with an order.
var bounds = map[token.Token]string{
	token.LSS: "bumpedLess", token.LEQ: "bumpedMost", token.GTR: "bumpedMore", token.GEQ: "bumpedLeast",
}

// operator adds what may become of an operator between two operands: a
// comparison takes its boundary in or leaves it out, and turns about; and stands
// for or, minus for plus. No operand is asked twice, and none that was not asked
// before.
func (w *walker) operator(n *ast.BinaryExpr) error {
	info := w.t.pkg.TypesInfo
	if info.Types[n].Value != nil {
		return nil
	}
	turned := func(e ast.Expr) wrap { return w.around(e, "((", ") != bumpedStep(%d))") }
	switch n.Op {
	case token.LAND, token.LOR: // by the law of De Morgan
		if !isBool(info.TypeOf(n.X)) || !isBool(info.TypeOf(n.Y)) {
			return nil
		}
		return w.add(logic, n, w.text(n), turned(n), turned(n.X), turned(n.Y))
	case token.EQL, token.NEQ, token.LSS, token.LEQ, token.GTR, token.GEQ:
		if err := w.add(turn, n, w.text(n), turned(n)); err != nil || bounds[n.Op] == "" || shifts(n) {
			return err
		}
		return w.add(bound, n, w.text(n), w.between(n, bounds[n.Op])...)
	}
	if sums[n.Op] == "" || !isNumber(info.TypeOf(n)) || shifts(n) {
		return nil
	}
	return w.add(arith, n, w.text(n), w.between(n, sums[n.Op])...)
}

// between makes a call of an operator: a + b is f(site, a, b).
func (w *walker) between(n *ast.BinaryExpr, f string) []wrap {
	from := w.t.pkg.Fset.Position(n.OpPos).Offset
	return []wrap{w.around(n, f+"(%d, ", ")"), {from, from + len(n.Op.String()), "/* ", " */,"}}
}

// assigned adds what may become of an operator that assigns: x += y is
// x = f(site, x, y).
func (w *walker) assigned(n *ast.AssignStmt) error {
	if sums[n.Tok] == "" || !isNumber(w.t.pkg.TypesInfo.TypeOf(n.Lhs[0])) || shifts(n.Rhs[0]) {
		return nil
	}
	from := w.t.pkg.Fset.Position(n.TokPos).Offset
	return w.add(arith, n, w.text(n),
		wrap{from, from + len(n.Tok.String()), "/* ", fmt.Sprintf(" */= %s(%%d, %s, ", sums[n.Tok], w.text(n.Lhs[0]))},
		w.around(n.Rhs[0], "", ")"))
}

func isBool(t types.Type) bool {
	return t != nil && types.Identical(types.Default(t), types.Typ[types.Bool])
}

func isNumber(t types.Type) bool {
	if p, ok := types.Unalias(t).(*types.TypeParam); ok {
		t = p.Constraint()
	}
	if in, ok := t.Underlying().(*types.Interface); ok && in.NumEmbeddeds() == 1 {
		if u, ok := in.EmbeddedType(0).(*types.Union); ok && u.Len() > 0 {
			t = u.Term(0).Type()
		}
	}
	b, ok := t.Underlying().(*types.Basic)
	return ok && b.Info()&(types.IsInteger|types.IsFloat) != 0
}

// shifts reports whether a shift stands in an operand: the type of a constant
// under one depends on what is around it.
func shifts(e ast.Expr) (yes bool) {
	ast.Inspect(e, func(n ast.Node) bool {
		b, ok := n.(*ast.BinaryExpr)
		yes = yes || ok && (b.Op == token.SHL || b.Op == token.SHR)
		return !yes
	})
	return yes
}

// operatorChooser is added to the package whose operators are changed.
const operatorChooser = `
type bumpedNumber interface {
	~int | ~int8 | ~int16 | ~int32 | ~int64 | ~uint | ~uint8 | ~uint16 | ~uint32 | ~uint64 | ~uintptr | ~float32 | ~float64
}

type bumpedOrder interface{ bumpedNumber | ~string }

func bumpedLess[T bumpedOrder](site int, a, b T) bool { return a < b || site == bumpedSite && a == b }

func bumpedMost[T bumpedOrder](site int, a, b T) bool { return a < b || site != bumpedSite && a == b }

func bumpedMore[T bumpedOrder](site int, a, b T) bool { return a > b || site == bumpedSite && a == b }

func bumpedLeast[T bumpedOrder](site int, a, b T) bool { return a > b || site != bumpedSite && a == b }

func bumpedAdd[T bumpedNumber](site int, a, b T) T {
	if site == bumpedSite {
		return a - b
	}
	return a + b
}

func bumpedSub[T bumpedNumber](site int, a, b T) T {
	if site == bumpedSite {
		return a + b
	}
	return a - b
}

func bumpedMul[T bumpedNumber](site int, a, b T) T {
	if site == bumpedSite {
		return a / b
	}
	return a * b
}

func bumpedQuo[T bumpedNumber](site int, a, b T) T {
	if site == bumpedSite {
		return a * b
	}
	return a / b
}

func bumpedRem[T ~int | ~int8 | ~int16 | ~int32 | ~int64 | ~uint | ~uint8 | ~uint16 | ~uint32 | ~uint64](site int, a, b T) T {
	if site == bumpedSite {
		return a * b
	}
	return a % b
}
`
