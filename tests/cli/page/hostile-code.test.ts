import { describe, expect, test } from 'vitest';
import { linked } from '../../../cli/page/requests/link.ts';
import { rulesIn } from '../../../cli/page/views/code/names/rules-in.ts';
import { slipsIn } from '../../../cli/page/views/code/names/slips.ts';
import { openDraft } from '../../../cli/page/views/code/open-draft.ts';
import { placeOfStep, stepAt, stepPlaces } from '../../../cli/page/views/code/step-places.ts';

/*
 * Drafts that somebody wrote to keep the page busy: they are read as they are opened, before anybody says that they may be run. Some of
 * these took minutes.
 */

/** Something that is put into a sentence, and a letter. */
const hole = '$'.concat('{a}x');
const length = 1_400_000;
const short = 29_000;
const texts = (size: number): Readonly<Record<string, string>> => {
  const of = (words: string): string => words.repeat(Math.floor(size / words.length));
  return {
    'blank lines': of('\n'),
    'an import of spaces': `import ${of(' ')}x`,
    'imports that never end': of('import {\n'),
    'an import of words': of('import a, '),
    'exports of exports': `export * ${of('as a ')} from`,
    'from, and from': `import ${of('from ')}`,
    'sentences without end': of('say`x`;\n'),
    'sentences of holes': `say\`${of(hole)}: y\``,
    'sentences that never end': of('say`{'),
    'one long line': of('a+'),
    brackets: of('('),
    lists: of('['),
    braces: of('{'),
    'rules of commas': `const r = ruleTable('K', { a: [${of(',')}] });`,
    quotes: of("'"),
    templates: of('`${'),
    generics: of('a<'),
    types: `type A = ${of('{a:')}`,
    arrows: of('(a=>'),
    slashes: of('/'),
    functions: of('function a(){'),
    names: Array.from({ length: size / 8 }, (_, i) => `a${i};`).join(''),
  };
};

/** How long something keeps this process busy, ms of its processors. */
function busy(act: () => unknown): number {
  const before = process.cpuUsage();
  act();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

/** At rest none takes more than half of it. */
const most = 4000;

describe.each([
  ['as long as a draft may be', length],
  ['as long as a file may be that is looked through for names', short],
])('code that is %s', (_, size) => {
  test.each(Object.entries(texts(size)))('is read in good time: %s', (_, text) => {
    const files = { 'a.ts': text };
    const took = {
      names: busy(() => [...slipsIn({ file: 'a.ts', files, program: {}, choices: [] })]),
      rules: busy(() => rulesIn(text)),
      steps: busy(() => stepPlaces(files)),
      link: busy(() => linked({ kind: 'link', key: '', asks: 'editor', files })),
    };
    expect(Math.max(...Object.values(took)), JSON.stringify(took)).toBeLessThan(most);
  });
});

test('a sentence with many holes is found in the lesson in good time, and only where its words stand', () => {
  const places = stepPlaces({
    'a.ts': `say\`${hole.repeat(500)}: y\`;\nsay\`Waist of \${whose} front: x\`;\n`,
  });
  const step = (number: number, title: string) => ({
    ...{ number, title, heading: '', words: [], source: '', places: [], grounds: [], draws: [] },
  });
  const steps = [
    step(1, 'x'.repeat(20_000).concat('y')),
    step(2, 'Waist of the front'),
    step(3, 'Waist of front'),
  ];
  const lesson = { garment: '', body: '', steps, dimensions: [] };
  expect(busy(() => placeOfStep(places, 1, lesson))).toBeLessThan(most);
  expect(busy(() => stepAt(places, 'a.ts', 1, lesson))).toBeLessThan(most);
  expect(stepAt(places, 'a.ts', 2, lesson)).toBe(2);
  expect(placeOfStep(places, 2, lesson)?.from).toBe(2);
  // Two words may not stand on each other: “of ” and “ front” want a space each.
  expect(placeOfStep(places, 3, lesson)).toBeUndefined();
});

test.each([
  ['too large', 'x'.repeat(1_500_001), 'is too large for a draft'],
  [
    'too many files',
    `// A Bodkin draft in several files; the first exports it.\n${'// ---- a.ts ----\n'.repeat(50_000)}`,
    'has too many files for a draft',
  ],
])('a draft of %s is not read, and says so in its place', async (_, text, why) => {
  const opened = await openDraft(new File([text], 'mine.ts'));
  expect(opened).toMatchObject({ strange: true, original: { 'mine.ts': `// mine.ts ${why}.\n` } });
});

test('files may be called anything', async () => {
  const text = `// A Bodkin draft in several files; the first exports it.\n// ---- __proto__ ----\nexport default 1;\n// ---- constructor ----\nexport const polluted = 1;\n`;
  const opened = await openDraft(new File([text], 'mine.ts'));
  if (opened.does !== 'begin') throw new Error(opened.does);
  expect(Object.keys(opened.original)).toEqual(['__proto__', 'constructor']);
  const { script } = linked({ kind: 'link', key: '', asks: 'editor', files: opened.original });
  expect(script).toContain('"__proto__":function');
  expect(({} as { polluted?: number }).polluted).toBeUndefined();
});
