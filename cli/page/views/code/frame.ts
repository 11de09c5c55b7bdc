/*
 * The frame that edited code is run in. It is sandboxed, so that its origin is none: neither the page nor what the browser
 * keeps for it can be reached. It begins one worker from the text that it is handed, and gives it the other end of a channel
 * to the page; policy and worker inherit from it that nothing may be fetched or imported, and no text made code. With the
 * frame its worker ends.
 */

/** All that the frame does. The page's security policy allows this very text, by its hash (index.html, page-server.ts). */
export const frameScript = `addEventListener('message',({data,ports:[port],source})=>{if(source!==parent||!port)return;const worker=new Worker(URL.createObjectURL(data));worker.onerror=(event)=>{event.preventDefault();port.postMessage({kind:'failed',message:event.message,line:event.lineno})};worker.postMessage(0,[port])},{once:true})`;

/** The hash of that text, as a security policy has it. */
export const frameHash = 'sha256-GxQFA4bqhaq5PlZRzGLlA6g+qFTmf3mpIzsUs7/H+EM=';

/** The frame as a document: its own policy is narrower than the page's, which holds for it too. */
export const frameDocument = `<!doctype html><meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src '${frameHash}'; worker-src blob:"><script>${frameScript}</script>`;
