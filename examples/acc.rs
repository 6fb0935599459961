use rectrix::{lexicon::*, knowledge::*};
fn main(){
  let t=std::time::Instant::now();
  let l=Knowledge::read_language(&Layers::built_in()); eprintln!("language {:?}",t.elapsed());
  if let Err(e)=&l {println!("{e}"); return}
  let t=std::time::Instant::now();
  match Knowledge::read_with_remarks(&Layers::built_in()) { Err(e)=>println!("{e}"), Ok((k,w))=>{ eprintln!("all {:?} accounts {} forms {}",t.elapsed(),k.accounts.len(),k.accounts.iter().map(|a|a.forms.len()).sum::<usize>()); for d in &w.0 {println!("{d}")} println!("{} remarks",w.0.len());
   if let Some(n)=std::env::args().nth(1){ for a in k.accounts.iter().filter(|a|a.english==n){ for f in &a.forms{ println!("## {}",f.label); for t in &f.traits{println!("  {} {} {} {} {}",k.lexicon.names.text(t.area),k.lexicon.names.text(t.aspect),t.value.text(&k.lexicon),t.polarity.text(),k.lexicon.names.text(t.extent))}}}}
  } }
}
