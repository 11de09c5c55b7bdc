import type { TypeAnswer, TypeQuestion } from './messages.ts';
import { type Declarations, typeService } from './type-service.ts';

/*
 * The worker that knows types, begun only when somebody asks for them: the compiler is larger than all the rest of the page.
 * A newer question leaves an older one where it is.
 */

const tell = (answer: TypeAnswer): void => self.postMessage(answer);
const service = fetch('declarations.json').then(async (response) => {
  if (!response.ok) throw new Error('The declarations could not be loaded.');
  return typeService((await response.json()) as Declarations);
});
service.catch(() => tell({ kind: 'failed' }));

let newest = 0;

self.addEventListener('message', async ({ data }: MessageEvent<TypeQuestion>) => {
  if (data.kind === 'check') newest = data.number;
  const types = await service;
  switch (data.kind) {
    case 'files':
      return types.tell(data.changed, data.gone);
    case 'mean':
      return tell({ kind: 'meant', number: data.number, meant: types.meaning(data.file, data.at) });
    case 'part':
      return tell({ kind: 'parted', number: data.number, parts: types.parts(data.file, data.at) });
    case 'check': {
      const others = types.files().filter((file) => file !== data.file);
      const problems = [];
      for (const [i, file] of [data.file, ...others].entries()) {
        // What came meanwhile is heard first.
        await new Promise((resolve) => setTimeout(resolve, 0));
        if (newest !== data.number) return;
        problems.push(...types.problems(file));
        if (i === 0 || i === others.length)
          tell({ kind: 'checked', number: data.number, problems, whole: i === others.length });
      }
    }
  }
});
