use rectrix::{lexicon::*, knowledge::*, diagnostic::Source};
fn walk(d:&std::path::Path, out:&mut Vec<Source>){ let mut v:Vec<_>=std::fs::read_dir(d).unwrap().map(|e|e.unwrap().path()).collect(); v.sort(); for p in v { if p.is_dir(){walk(&p,out)} else { out.push(Source::new(p.to_str().unwrap(), std::fs::read_to_string(&p).unwrap())) } } }
fn main(){
  let a:Vec<String>=std::env::args().collect();
  let mut l=Layers::default(); walk(std::path::Path::new(&a[1]),&mut l.base); if a.len()>2 && a[2]!="-" { walk(std::path::Path::new(&a[2]),&mut l.own); }
  match Knowledge::read_with_remarks(&l) { Err(e)=>println!("{e}"), Ok((k,w))=>{ let f=a.get(3).cloned().unwrap_or_default(); let mut n=0; for d in &w.0 {let s=d.to_string(); if s.contains(&f) {println!("{}",s.split(" (put it").next().unwrap()); n+=1}} println!("{n} remarks");
   if let Some(nm)=a.get(4){ for x in k.accounts.iter().filter(|x|&x.english==nm){ for f in &x.forms{ println!("## {}",f.label); for t in k.accounts.traits_of(x,f){println!("  {} {} {} {} {}",k.lexicon.names.text(t.area),k.lexicon.names.text(t.aspect),t.value.text(&k.lexicon),t.polarity.text(),k.lexicon.names.text(t.extent))}}}}
  } }
}
