import { unzlibSync } from 'fflate';
import { applyToPoint, compose, type Matrix } from 'transformation-matrix';
import { boundingBox } from '../../geometry/bounds.ts';
import type { Curve } from '../../geometry/curve.ts';
import { type Point, point } from '../../geometry/point.ts';
import { operatorsOf, type PdfOperator } from './operators.ts';
import { type PdfPage, type PdfPath, unit } from './pdf-page.ts';

/**
 * Reads the lines back from a PDF that this program wrote: every path of every page, as the page's content says, in the
 * order of the pages. Throws where the file is not built as such a file is (ISO 32000-1:2008, 7.3 and 7.7.3).
 */
export function readPdf(bytes: Uint8Array): readonly PdfPage[] {
  // A letter for every byte, so that places in the one are places in the other.
  const text = new TextDecoder('latin1').decode(bytes);
  const objects = new Map(
    Array.from(text.matchAll(/(?:^|\n)(\d+) 0 obj\n/g), ({ 1: number, 0: head, index }) => [
      number,
      index + head.length,
    ]),
  );
  const dictionary = (number: string | undefined): { readonly said: string; readonly end: number } => {
    const start = objects.get(number);
    const end = start === undefined ? -1 : text.indexOf('endobj', start);
    if (start === undefined || end < 0) throw new Error(`The PDF has no object ${number}.`);
    const stream = text.indexOf('stream\n', start);
    const head = stream > 0 && stream < end ? stream : end;
    return { said: text.slice(start, head), end: head + 'stream\n'.length };
  };
  const kids = one(text, /\/Kids \[([^\]]*)\]/).matchAll(/(\d+) 0 R/g);
  return Array.from(kids, ({ 1: number }): PdfPage => {
    const page = dictionary(number).said;
    const [, , width = 0, height = 0] = one(page, /\/MediaBox \[([^\]]*)\]/)
      .split(' ')
      .map(Number);
    const content = dictionary(one(page, /\/Contents (\d+) 0 R/));
    const length = Number(one(content.said, /\/Length (\d+)/));
    const operators = unzlibSync(bytes.subarray(content.end, content.end + length));
    return { width, height, paths: pathsOf(operatorsOf(new TextDecoder().decode(operators)), height) };
  });
}

function one(text: string, pattern: RegExp): string {
  const found = pattern.exec(text)?.[1];
  if (found === undefined) throw new Error(`The PDF says nothing of ${pattern}.`);
  return found;
}

interface State {
  readonly matrix: Matrix;
  readonly clip: PdfPath['clip'];
}

/** Follows the content of a page: its transforms, clips, marked content and paths (8.4.4, 8.5 and 14.6). */
function pathsOf(operators: Iterable<PdfOperator>, height: number): readonly PdfPath[] {
  // Units with y up become millimetres with y down.
  let state: State = {
    matrix: { a: unit, b: 0, c: 0, d: -unit, e: 0, f: height * unit },
    clip: undefined,
  };
  const saved: State[] = [];
  const tags: (string | undefined)[] = [];
  const paths: PdfPath[] = [];
  let curves: Curve[] = [];
  let at = point(0, 0);
  let closed = false;
  let clips = false;
  const place = (x = Number.NaN, y = Number.NaN): Point => applyToPoint(state.matrix, point(x, y));
  const lineTo = (to: Point): void => {
    curves.push({ kind: 'line', from: at, to });
    at = to;
  };
  for (const { name, numbers, called } of operators) {
    const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = numbers;
    switch (name) {
      case 'q':
        saved.push(state);
        break;
      case 'Q':
        state = saved.pop() ?? state;
        break;
      case 'cm':
        state = { ...state, matrix: compose(state.matrix, { a, b, c, d, e, f }) };
        break;
      case 'BMC':
      case 'BDC':
        tags.push(called);
        break;
      case 'EMC':
        tags.pop();
        break;
      case 'm':
        at = place(a, b);
        break;
      case 'l':
        lineTo(place(a, b));
        break;
      case 'c': {
        const to = place(e, f);
        curves.push({ kind: 'cubic', from: at, handle1: place(a, b), handle2: place(c, d), to });
        at = to;
        break;
      }
      case 're':
        at = place(a, b);
        for (const corner of [place(a + c, b), place(a + c, b + d), place(a, b + d)]) lineTo(corner);
        closed = true;
        break;
      case 'h':
        closed = true;
        break;
      case 'W':
        clips = true;
        break;
      case 'n':
      case 'S':
      case 'f':
        if (clips) state = { ...state, clip: boxOf(curves) };
        else if (name !== 'n') paths.push({ tag: tags.at(-1), curves, closed, clip: state.clip });
        curves = [];
        closed = false;
        clips = false;
        break;
    }
  }
  return paths;
}

function boxOf(curves: readonly Curve[]): PdfPath['clip'] {
  const { left, right, top, bottom } = boundingBox(curves);
  return [point(left, top), point(right, bottom)];
}
