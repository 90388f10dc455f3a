package picture
import ("testing";"os";"time";"github.com/spf13/afero";"vivary/plan";"vivary/compile";"bytes")
func TestDump(t *testing.T){
 c,f,err:=plan.Load(afero.NewOsFs(),"../../examples/quillmoor"); if err!=nil{t.Fatal(err)}
 r:=compile.Compile(c,f,time.Date(2026,11,25,12,0,0,0,time.UTC))
 os.MkdirAll("/tmp/pics",0o755)
 for i,l:=range r.Lives{ var b bytes.Buffer; if err:=Year(&b,r,i);err!=nil{t.Fatal(err)}; os.WriteFile("/tmp/pics/"+l.Plan.Name.V+".svg",b.Bytes(),0o644)}
}
