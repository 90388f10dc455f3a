package main

import (
	"go/ast"
	"go/parser"
	"go/token"
	"strconv"
	"strings"
)

// mutant is one place of one file, changed.
type mutant struct {
	file     string // below the module's root
	function string // with its receiver's type, "-" outside of functions
	line     int
	from, to int    // bytes that are replaced
	text     string // by this
	was, is  string // the line before and after, as people read it
}

// key names a mutant whatever lines stand before it.
func (m *mutant) key() string { return m.file + "\t" + m.function + "\t" + m.was + " => " + m.is }

// mutate returns the source with the change.
func (m *mutant) mutate(source []byte) []byte {
	return []byte(string(source[:m.from]) + m.text + string(source[m.to:]))
}

// others are the operators that take an operator's place.
var others = map[token.Token]token.Token{
	token.LSS: token.LEQ, token.LEQ: token.LSS, token.GTR: token.GEQ, token.GEQ: token.GTR,
	token.EQL: token.NEQ, token.NEQ: token.EQL, token.LAND: token.LOR, token.LOR: token.LAND,
	token.ADD: token.SUB, token.SUB: token.ADD,
}

// largest is the largest number that is changed by one: larger ones are figures,
// which tests should not repeat.
const largest = 100

// mutants returns every change of a file that is made, in the order of the text.
// Many do not compile; the compiler says which.
func mutants(file string, source []byte) ([]mutant, error) {
	set := token.NewFileSet()
	tree, err := parser.ParseFile(set, file, source, parser.SkipObjectResolution)
	if err != nil {
		return nil, err
	}
	f := finder{file: file, source: source, set: set, function: "-"}
	for _, d := range tree.Decls {
		f.function, f.end = "-", nil
		if d, ok := d.(*ast.FuncDecl); ok {
			f.function = name(d)
			if d.Body != nil && len(d.Body.List) > 0 {
				f.end = d.Body.List[len(d.Body.List)-1]
			}
		}
		ast.Inspect(d, f.visit)
	}
	return f.found, nil
}

func name(d *ast.FuncDecl) string {
	if d.Recv == nil {
		return d.Name.Name
	}
	t := d.Recv.List[0].Type
	if star, ok := t.(*ast.StarExpr); ok {
		t = star.X
	}
	if generic, ok := t.(*ast.IndexExpr); ok {
		t = generic.X
	}
	if id, ok := t.(*ast.Ident); ok {
		return id.Name + "." + d.Name.Name
	}
	return d.Name.Name
}

type finder struct {
	file, function string
	source         []byte
	set            *token.FileSet
	end            ast.Stmt // of the function
	found          []mutant
}

func (f *finder) visit(n ast.Node) bool {
	switch n := n.(type) {
	case *ast.BinaryExpr:
		if other, ok := others[n.Op]; ok && !joins(n) {
			f.replace(n.OpPos, n.OpPos+token.Pos(len(n.Op.String())), other.String())
		}
	case *ast.BasicLit:
		if v, err := strconv.Atoi(n.Value); n.Kind == token.INT && err == nil && v <= largest {
			f.replace(n.Pos(), n.End(), strconv.Itoa(v+1))
			f.replace(n.Pos(), n.End(), strconv.Itoa(v-1))
		}
	case *ast.Ident:
		switch n.Name {
		case "true":
			f.replace(n.Pos(), n.End(), "false")
		case "false":
			f.replace(n.Pos(), n.End(), "true")
		}
	case *ast.IfStmt:
		// Of one comparison the operator is changed already.
		if b, ok := n.Cond.(*ast.BinaryExpr); !ok || b.Op != token.EQL && b.Op != token.NEQ {
			f.replace(n.Cond.Pos(), n.Cond.End(), "!("+f.text(n.Cond)+")")
		}
	case *ast.BlockStmt:
		f.statements(n.List)
	case *ast.CaseClause:
		f.statements(n.Body)
	}
	return true
}

// joins reports whether texts are put together, which nothing else can be done to.
func joins(n ast.Expr) bool {
	switch n := n.(type) {
	case *ast.BinaryExpr:
		return n.Op == token.ADD && (joins(n.X) || joins(n.Y))
	case *ast.BasicLit:
		return n.Kind == token.STRING
	}
	return false
}

// statements deletes each statement that a list can do without.
func (f *finder) statements(list []ast.Stmt) {
	for _, s := range list {
		switch s := s.(type) {
		case *ast.AssignStmt:
			if s.Tok == token.DEFINE {
				continue
			}
		case *ast.ReturnStmt:
			if s == f.end {
				continue
			}
		case *ast.ExprStmt, *ast.IncDecStmt, *ast.BranchStmt:
		default:
			continue
		}
		f.replace(s.Pos(), s.End(), "")
	}
}

func (f *finder) text(n ast.Node) string {
	return string(f.source[f.set.Position(n.Pos()).Offset:f.set.Position(n.End()).Offset])
}

func (f *finder) replace(from, to token.Pos, text string) {
	p := f.set.Position(from)
	m := mutant{file: f.file, function: f.function, line: p.Line, from: p.Offset, to: f.set.Position(to).Offset, text: text}
	begin := strings.LastIndexByte(string(f.source[:m.from]), '\n') + 1
	end := len(f.source)
	if n := strings.IndexByte(string(f.source[m.to:]), '\n'); n >= 0 {
		end = m.to + n
	}
	words := func(s string) string { return strings.Join(strings.Fields(s), " ") }
	m.was = words(string(f.source[begin:end]))
	m.is = words(string(f.source[begin:m.from]) + text + string(f.source[m.to:end]))
	f.found = append(f.found, m)
}
