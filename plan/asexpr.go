package plan

import (
	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
	"github.com/zclconf/go-cty/cty"

	"vivary/plan/source"
	"vivary/plan/syntax"
)

// asAttribute returns an attribute as the library's, for value.go.
func asAttribute(a *syntax.Attr) *hclsyntax.Attribute {
	return &hclsyntax.Attribute{Name: a.Name, Expr: asExpression(&a.Value), SrcRange: asRange(a.At), NameRange: asRange(a.NameAt)}
}

func asRange(at source.Place) hcl.Range {
	return hcl.Range{Start: hcl.Pos{Byte: int(at.Start)}, End: hcl.Pos{Byte: int(at.End)}}
}

func asExpression(v *syntax.Value) hclsyntax.Expression {
	at := asRange(v.At)
	switch v.Kind {
	case syntax.Text:
		part := hclsyntax.Expression(&hclsyntax.LiteralValueExpr{Val: cty.StringVal(v.Text), SrcRange: at})
		if v.Filled {
			part = &hclsyntax.ScopeTraversalExpr{SrcRange: at}
		}
		return &hclsyntax.TemplateExpr{Parts: []hclsyntax.Expression{part}, SrcRange: at}
	case syntax.Number:
		n, err := cty.ParseNumberVal(v.Text)
		if err != nil || v.Text[0] == '-' {
			n = cty.UnknownVal(cty.Number)
		}
		return &hclsyntax.LiteralValueExpr{Val: n, SrcRange: at}
	case syntax.Truth:
		return &hclsyntax.LiteralValueExpr{Val: cty.BoolVal(v.Text == "true"), SrcRange: at}
	case syntax.List:
		list := &hclsyntax.TupleConsExpr{SrcRange: at, OpenRange: at}
		for i := range v.Items {
			list.Exprs = append(list.Exprs, asExpression(&v.Items[i]))
		}
		return list
	}
	return &hclsyntax.ScopeTraversalExpr{SrcRange: at}
}
