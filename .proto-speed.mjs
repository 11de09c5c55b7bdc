import { chromium } from 'playwright-core';
import { createServer } from 'node:http';
import { readFileSync } from 'node:fs';
const types={html:'text/html',js:'text/javascript',css:'text/css',svg:'image/svg+xml',yaml:'text/plain'};
const srv=createServer((q,r)=>{try{let p=q.url.split('?')[0]; if(p==='/')p='/index.html'; const b=readFileSync('.dist/page'+p); r.writeHead(200,{'content-type':types[p.split('.').pop()]??'text/plain'}); r.end(b);}catch{r.writeHead(404);r.end();}}).listen(0);
const url='http://localhost:'+srv.address().port+'/';
const b=await chromium.launch({executablePath:'/usr/bin/chromium',args:['--no-sandbox']});
const c=await b.newContext({viewport:{width:1400,height:900}});
const p=await c.newPage(); p.on('pageerror',e=>console.log('ERR',e.message));
await p.goto(url);
await p.getByText('Open a file').click(); await p.getByRole('button',{name:'Leading lady'}).click(); await p.getByText('is drawn, and').waitFor({timeout:60000}); await p.waitForTimeout(1500);
await p.getByRole('link',{name:'Choose'}).click(); await p.waitForTimeout(800);
const out=await p.evaluate(async (n)=>{
  const slider=[...document.querySelectorAll('input[type=range]')].find(x=>x.getAttribute('aria-label').startsWith('Strap width'));
  const svg=document.querySelector('.pane svg');
  const painted=()=>new Promise(r=>requestAnimationFrame(()=>{const m=new MessageChannel();m.port1.onmessage=()=>r();m.port2.postMessage(0);}));
  const w=new Worker('worker.js',{type:'module'});
  await new Promise(r=>{w.onmessage=r});
  const body=JSON.parse(localStorage.getItem('bodkin')).body;
  const engine=(v,number,parts)=>{const t=performance.now();return new Promise(r=>{w.onmessage=()=>r(performance.now()-t);w.postMessage({kind:'draft',number,body,garment:'dress',choices:{strapWidth:String(v)},parts});});};
  for(let i=0;i<15;i++) await engine(30+i,i,[]);
  for(let i=0;i<60;i++){slider.value=String(30+(i%25)); const ch=new Promise(r=>{const o=new MutationObserver(ms=>{ if(ms.some(m=>m.attributeName==='d')){o.disconnect();r();}});o.observe(svg,{subtree:true,attributes:true,attributeFilter:['d']});}); slider.dispatchEvent(new Event('input',{bubbles:true})); await ch;} const moves=[],eng=[],engl=[],mut=[];
  for(let i=0;i<n;i++){
    const v=30+((i*7)%25);
    eng.push(await engine(v+0.5,i,[]));
    engl.push(await engine(v+0.5,i,['lines']));
    const t=performance.now();
    const changed=new Promise(r=>{const o=new MutationObserver(ms=>{ if(ms.some(m=>m.attributeName==='d')){o.disconnect();r();}});o.observe(svg,{subtree:true,attributes:true,attributeFilter:['d']});});
    slider.value=String(v); const t1=performance.now(); slider.dispatchEvent(new Event('input',{bubbles:true})); (window.__d??=[]).push(performance.now()-t1);
    await changed; mut.push(performance.now()-t); await painted(); moves.push(performance.now()-t);
  }
  return {moves,eng,engl,mut,dispatch:window.__d,hear:window.__h??[0],gap:window.__g??[0]};
},Number(process.argv[2]??60));
const q=(a,f)=>{const s=[...a].sort((x,y)=>x-y);return s[Math.floor(s.length*f)].toFixed(1)};
for(const [k,v] of Object.entries(out)) console.log(k.padEnd(8),'min',q(v,0),'med',q(v,.5),'p95',q(v,.95));
console.log('ratio med',q(out.moves,.5)/q(out.eng,.5),'p95/med',q(out.moves,.95)/q(out.eng,.5), 'p95/p95', q(out.moves,.95)/q(out.eng,.95));
await b.close(); srv.close();
