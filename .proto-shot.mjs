import { chromium } from 'playwright-core';
import { createServer } from 'node:http';
import { readFileSync } from 'node:fs';
const types={html:'text/html',js:'text/javascript',css:'text/css',svg:'image/svg+xml',yaml:'text/plain'};
const srv=createServer((q,r)=>{try{let p=q.url.split('?')[0]; if(p==='/')p='/index.html'; const b=readFileSync('.dist/page'+p); r.writeHead(200,{'content-type':types[p.split('.').pop()]??'text/plain'}); r.end(b);}catch{r.writeHead(404);r.end();}}).listen(0);
const url='http://localhost:'+srv.address().port+'/';
const b=await chromium.launch({executablePath:'/usr/bin/chromium',args:['--no-sandbox']});
const shots=JSON.parse(process.argv[2]);
for(const {w=1280,h=900,dark=false,name,steps=[],body='Leading lady'} of shots){
  const c=await b.newContext({viewport:{width:w,height:h},colorScheme:dark?'dark':'light'});
  const p=await c.newPage(); p.on('pageerror',e=>console.log('ERR',e.message)); p.on('console',m=>{if(m.type()==='error')console.log('CON',m.text())});
  await p.goto(url);
  if(body){ await p.getByText('Open a file').click(); await p.getByRole('button',{name:body}).click(); await p.getByText('is drawn, and').waitFor({timeout:60000}); await p.waitForTimeout(1200);}
  for(const s of steps){ await eval('(async()=>{'+s+'})()'); await p.waitForTimeout(500); }
  await p.screenshot({path:'/tmp/page-pieces/'+name+'.png'});
  await c.close();
}
await b.close(); srv.close();
