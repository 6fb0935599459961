use rectrix::{lexicon::*, rules::Rules, reading::*, diagnostic::Diagnostics};
use std::io::Read;
fn main(){
  let t=std::time::Instant::now();
  let (mut lex, mut wrong)=Lexicon::read(&rectrix::built_in::layers());
  let entries=lex.others.clone();
  let rules={ let Lexicon{ref kinds,ref mut names,ref mut vocabulary,..}=lex; Rules::read(&entries,kinds,names,vocabulary,&mut wrong)};
  for d in &wrong.0 { eprintln!("{d}"); }
  eprintln!("load {:?} terms {}",t.elapsed(), lex.vocabulary.terms.len());
  if wrong.has_errors() {std::process::exit(2)}
  let reader=Reader::new(&lex,&rules,"north-america").with_trace();
  let mut s=String::new(); std::io::stdin().read_to_string(&mut s).unwrap();
  let quiet=std::env::args().any(|a|a=="-q");
  let t=std::time::Instant::now(); let mut n=0; let mut any=0; let mut part=0; let mut unp=0; let mut wordsn=0;
  let bird=lex.names.find("bird"); let mut unk=std::collections::HashMap::new(); let mut non=vec![];
  for line in s.lines(){
    let r=reader.read(line); n+=1;
    if !r.traits.is_empty(){any+=1} if r.traits.iter().any(|t|t.area!=bird){part+=1} else {non.push(line)}
    for u in r.unplaced(){unp+=1; *unk.entry(u.of(line).to_lowercase()).or_insert(0)+=1;} wordsn+=r.tokens.len();
    if !quiet { println!("# {line}");
     for t in &r.traits { println!("   {} {} {}{}{}{}{}{} <{}> [{}]", lex.names.text(t.area),lex.names.text(t.aspect),t.value.text(&lex),
      if t.tone.is_some(){format!(" tone={}",lex.names.text(t.tone))}else{"".into()}, if t.extent.is_some(){format!(" ext={}",lex.names.text(t.extent))}else{"".into()}, if t.position.is_some(){format!(" pos={}",lex.names.text(t.position))}else{"".into()},
      if t.polarity!=rectrix::traits::Polarity::Present{format!(" {}",t.polarity.text())}else{"".into()}, if t.certainty==rectrix::traits::Certainty::Hedged{" hedged"}else{""}, t.as_written(line), rules.rules[t.rule].name); }
     if std::env::args().any(|a|a=="-m") { for m in &r.matches { println!("   M {} [{}]", rules.rules[m.rule].name, r.tokens[m.start..m.end].iter().map(|t|t.span.of(line)).collect::<Vec<_>>().join("|")); for st in &m.steps { println!("      {}{} {:?}"," ".repeat(st.depth*2),rules.rules[st.rule].name, st.span.of(line)); } } for t in &r.tokens { println!("     T {:?} {:?}", t.span.of(line), lex.kinds.names_of(t.kinds)); } }
     for sgm in &r.segments { match &sgm.fate { Fate::Unplaced=>println!("   UNPLACED {}",sgm.span.of(line)), Fate::SetAside(w) if w!="sign"&&w!="joining word"=>println!("   aside {} ({w})",sgm.span.of(line)), _=>{} } } }
  }
  if quiet { let mut v:Vec<_>=unk.into_iter().collect(); v.sort_by_key(|x|-x.1); for (w,c) in v.iter().take(150){print!("{w}({c}) ")} println!(); for l in non.iter().take(60){println!("NOPART {l}")}}
  eprintln!("n={n} any={:.2}% part={:.2}% unplaced={:.2}% of {wordsn}, {:?}", 100.*any as f64/n as f64,100.*part as f64/n as f64,100.*unp as f64/wordsn as f64, t.elapsed());
}
