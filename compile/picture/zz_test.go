package picture
import ("testing";"fmt";"time";"github.com/spf13/afero";"vivary/plan";"vivary/compile")
func TestDump(t *testing.T){
 c,f,err:=plan.Load(afero.NewOsFs(),"../../examples/quillmoor"); if err!=nil{t.Fatal(err)}
 r:=compile.Compile(c,f,time.Date(2026,11,25,12,0,0,0,time.UTC))
 for i,l:=range r.Lives{
  fmt.Println("==",i,l.Plan.Name.V,l.Plan.Shown(), r.Horizon.From.Words(), r.Horizon.Days)
  for _,h:=range l.Holds{fmt.Println(" hold",h.From,h.Until,h.Open,h.What,h.Why,"|",h.End)}
  for _,h:=range l.Halves{fmt.Println(" half",h.From,h.Until,h.What,h.Why)}
  for _,g:=range l.Groups{
   fmt.Println(" group",g.Animals.Name.V,g.Stages,g.Numbers,g.Quarantined)
   for _,h:=range g.Holds{fmt.Println("  hold",h.From,h.Until,h.Open,h.What,h.Why,"|",h.End)}
   for _,h:=range g.Windows{fmt.Println("  win",h.From,h.Until,h.Name,"|",h.Title,"|",h.Text)}
   for _,h:=range g.Tasks{fmt.Println("  task",h.On,h.Times,h.Interval,h.Name,h.Kind,"|",h.Text)}
  }
  for k:=range r.Schedule.Of[i]{s:=&r.Schedule.Of[i][k]; n:=func(d []uint64)int{return 0};_=n
   fmt.Println("  series",s.Name,s.Kind.Name,s.Days.Count(),"held",s.Held.Count(),"left",s.Left.Count(),s.Round.Name.V,s.Keeper,s.Words(),len(s.Menu)) 
   for _,p:=range s.Menu{fmt.Println("      ",p.Prey,p.Items,p.Days.Count())}}
 }
}
