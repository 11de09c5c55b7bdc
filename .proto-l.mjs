import { chromium } from 'playwright-core';
import { createServer } from 'node:http';
import { readFileSync } from 'node:fs';
const types={html:'text/html',js:'text/javascript',css:'text/css',svg:'image/svg+xml',yaml:'text/plain'};
const srv=createServer((q,r)=>{try{let p=q.url.split('?')[0]; if(p==='/')p='/index.html'; const b=readFileSync('.dist/page'+p); r.writeHead(200,{'content-type':types[p.split('.').pop()]??'text/plain'}); r.end(b);}catch{r.writeHead(404);r.end();}}).listen(0);
const b=await chromium.launch({executablePath:'/usr/bin/chromium',args:['--no-sandbox']});
const p=await (await b.newContext({viewport:{width:1280,height:900}})).newPage(); p.on('console',m=>console.log(m.text()));
await p.goto('http://localhost:'+srv.address().port+'/#choose/dress?strapWidth=33&shoulder=whole&&'+encodeURIComponent(JSON.stringify({name:'a b',units:'cm',bustGirth:92,waistGirth:74,hipGirth:99,backNeckPointToWaist:40.5})));
await p.waitForTimeout(4000); console.log(await p.locator('.standing').textContent()); console.log(await p.evaluate('document.querySelector("main").innerText.slice(0,900)')); await b.close(); srv.close();
