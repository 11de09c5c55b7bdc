import { describe, expect, it } from 'vitest';
import { inBatches, inOrder } from '../../../cli/many-bodies/in-order.ts';
import { answerLine } from '../../../cli/orders/answer.ts';
import { answersName, chunkName, setName } from '../../../cli/orders/manifest.ts';
import { readOrder } from '../../../cli/orders/order.ts';
import { isSafeId } from '../../../cli/orders/order-id.ts';
import { SeenIds } from '../../../cli/orders/seen-ids.ts';
import { orderOf } from './program.ts';

const read = (row: unknown) => readOrder(7, typeof row === 'string' ? row : JSON.stringify(row));
const refusal = (row: unknown) => {
  const found = read(row);
  return 'issue' in found ? found.issue : undefined;
};

describe('an order', () => {
  it('asks for the report where it says nothing, and for each thing once', () => {
    expect(read(orderOf(1))).toMatchObject({ order: { id: 'rail-1', write: ['report'], paper: 'a4' } });
    expect(read(orderOf(1, { write: ['svg', 'report', 'svg'] }))).toMatchObject({
      order: { write: ['report', 'svg'] },
    });
    expect(read(orderOf(1, { write: [], id: 17 }))).toMatchObject({ order: { id: '17', write: [] } });
  });

  it.each([
    ['no JSON', '{"id":', 'not-json', 'Line 7 is not JSON.'],
    ['a list', [], 'not-an-order', 'one JSON object'],
    ['a field too many', orderOf(1, { grament: 'skirt' }), 'not-an-order', 'Did you mean “garment”?'],
    [
      'a field that every object has',
      '{"id":"a","garment":"skirt","body":{},"__proto__":{}}',
      'not-an-order',
      'no field “__proto__”',
    ],
    ['no body', { id: 'a', garment: 'skirt' }, 'not-an-order', '“body” is missing'],
    ['a body that is none', { ...orderOf(1), body: 92 }, 'not-an-order', '“body” should be measurements'],
    [
      'something else to write',
      orderOf(1, { write: ['png'] }),
      'not-an-order',
      'a list of report, svg, dxf, dxf-curves, pdf',
    ],
    ['a garment that is none', orderOf(1, { garment: 'skirts' }), 'unknown-garment', 'Did you mean “skirt”?'],
    ['an id that leads out', orderOf(1, { id: '../../up' }), 'order-id-unsafe', '“../../up” is no name'],
    ['one thing twice', '{"id":"a","id":"b"}', 'said-twice', 'Line 7'],
  ])('is refused by its line: %s', (_, row, code, words) => {
    expect(refusal(row)).toMatchObject({ code, path: 'line 7', message: expect.stringContaining(words) });
  });

  it('of a line too long for any is refused, and its length is all that was read', () => {
    expect(readOrder(3, undefined)).toMatchObject({ issue: { code: 'line-too-long', path: 'line 3' } });
  });
});

describe('an id', () => {
  it.each(['a', 'A-17', '2031_05.b', 'x'.repeat(100), '-', '007'])('names a file: %s', (id) => {
    expect(isSafeId(id)).toBe(true);
  });

  it.each([
    ...['', '.', '..', 'a/b', 'a\\b', '.hidden', 'dot.', 'a b', 'a\n', 'ä', 'a\0', 'x'.repeat(101)],
    ...['CON', 'nul.txt', 'com1'],
  ])('names none: %j', (id) => {
    expect(isSafeId(id)).toBe(false);
  });

  it('is known again among very many, whatever its capitals', () => {
    const seen = new SeenIds();
    const many = 60_000;
    let [fresh, again] = [0, 0];
    for (let i = 0; i < many; i++) fresh += seen.add(`A-${i}`) ? 1 : 0;
    for (let i = 0; i < many; i++) again += seen.add(`a-${i}`) ? 0 : 1;
    expect([fresh, again]).toEqual([many, many]);
    expect(seen.add(`A-${many}`)).toBe(true);
  });
});

describe('names in a store', () => {
  it('depend on what they name, and on nothing else', () => {
    // SHA-256 of “abc” (FIPS 180-4, its first example), cut to 128 bits.
    expect(chunkName(Buffer.from('abc'))).toBe('ba7816bf8f01cfea414140de5dae2223');
    const [a, b] = [chunkName(Buffer.from('a')), chunkName(Buffer.from('b'))];
    expect(answersName(a, b)).not.toBe(answersName(b, a));
    const manifest = {
      version: 1,
      code: a,
      orders: 1,
      refused: 0,
      chunks: [{ name: b, orders: 1 }],
    } as const;
    expect(setName(manifest as never)).toBe(setName({ ...manifest, refused: 3 } as never));
    expect(setName(manifest as never)).not.toBe(setName({ ...manifest, code: b } as never));
  });
});

describe('an answer', () => {
  const answer = async (row: object) => {
    const { text, code } = await answerLine({ number: 1, text: JSON.stringify(row) });
    return { ...JSON.parse(text), code };
  };

  it('holds what was asked for, and no more', async () => {
    expect(await answer(orderOf(1, { write: [] }))).toMatchObject({
      ok: true,
      drafted: true,
      files: {},
      code: 0,
    });
    const { files } = await answer(orderOf(1, { write: ['dxf', 'pdf', 'report'] }));
    expect(Object.keys(files)).toEqual(['report.json', 'cutting.dxf', 'pattern.pdf']);
    expect(Buffer.from(files['pattern.pdf'].base64, 'base64').subarray(0, 5).toString()).toBe('%PDF-');
  });

  it('says why there is none, of the body, the styling or the paper', async () => {
    const ask = (more: object) => answer(orderOf(1, more));
    expect(await ask({ body: { units: 'cm' } })).toMatchObject({
      id: 'rail-1',
      drafted: false,
      ok: false,
      code: 2,
    });
    expect(await ask({ styling: { skirtTo: 'moon' } })).toMatchObject({ drafted: false, code: 2 });
    const paper = await ask({ write: ['report', 'pdf'], paper: 'papyrus' });
    expect(paper).toMatchObject({ drafted: true, ok: false, code: 1, issues: [{ code: 'unknown-paper' }] });
    expect(Object.keys(paper.files)).toEqual(['report.json']);
    expect(await answer([])).toMatchObject({ id: null, garment: null, drafted: false, code: 2 });
  });

  it('is the same every time', async () => {
    const line = { number: 1, text: JSON.stringify(orderOf(2, { write: ['report', 'svg', 'pdf'] })) };
    expect(await answerLine(line)).toEqual(await answerLine(line));
  });
});

describe('what is worked on side by side', () => {
  async function* upTo(count: number) {
    for (let i = 0; i < count; i++) yield i;
  }

  it('comes out in its order, with no more on its way than is asked for', async () => {
    let [atWork, most] = [0, 0];
    const out: number[] = [];
    const work = async (i: number) => {
      atWork += 1;
      most = Math.max(most, atWork);
      await new Promise((resolve) => setTimeout(resolve, (i * 7) % 5));
      atWork -= 1;
      return 10 * i;
    };
    for await (const { item, answer } of inOrder(upTo(40), work, 4)) {
      expect(answer).toBe(10 * item);
      out.push(item);
    }
    expect(out).toEqual([...Array(40).keys()]);
    expect(most).toBeLessThanOrEqual(4);
  });

  it('fails when the turn of what failed comes', async () => {
    const out: number[] = [];
    const work = async (i: number) => {
      if (i === 3) throw new Error('three');
      return i;
    };
    await expect(async () => {
      for await (const { answer } of inOrder(upTo(9), work, 4)) out.push(answer);
    }).rejects.toThrow('three');
    expect(out).toEqual([0, 1, 2]);
  });

  it('is cut into batches, the last as small as it comes', async () => {
    const batches: (readonly number[])[] = [];
    for await (const batch of inBatches(upTo(5), 2)) batches.push(batch);
    expect(batches).toEqual([[0, 1], [2, 3], [4]]);
  });

  it('comes out as soon as it is answered, though the next one waits for just that', async () => {
    let heard: (() => void) | undefined;
    async function* talk() {
      for (let i = 0; i < 5; i++) {
        const answered = new Promise<void>((resolve) => {
          heard = resolve;
        });
        yield i;
        await answered;
      }
    }
    const out: (readonly number[])[] = [];
    for await (const { answer } of inOrder(inBatches(talk(), 16), async (batch) => batch, 4)) {
      out.push(answer);
      heard?.();
    }
    expect(out).toEqual([[0], [1], [2], [3], [4]]);
  });

  it('is told of where it cannot be read on, after what could be was answered', async () => {
    async function* broken() {
      yield 1;
      yield 2;
      await new Promise((resolve) => setTimeout(resolve, 5));
      throw new Error('gone');
    }
    const out: number[] = [];
    await expect(async () => {
      for await (const { answer } of inOrder(inBatches(broken(), 1), async ([i = 0]) => i, 4))
        out.push(answer);
    }).rejects.toThrow('gone');
    expect(out).toEqual([1, 2]);
  });

  it('is let go of by who wants no more of it', async () => {
    let left = false;
    async function* endless() {
      try {
        for (let i = 0; ; i++) yield i;
      } finally {
        left = true;
      }
    }
    for await (const { item } of inOrder(inBatches(endless(), 3), async (batch) => batch, 2))
      if (item.includes(6)) break;
    await new Promise((resolve) => setTimeout(resolve, 5));
    expect(left).toBe(true);
  });
});
