import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Curve } from '../../../../engine/geometry/curve.ts';
import { type Point, point } from '../../../../engine/geometry/point.ts';
import type { PdfPage, PdfPath } from '../../../../engine/reading/pdf/pdf-page.ts';

/** A page as pdf.js finds it, with its words. */
export interface ReadPage extends PdfPage {
  readonly text: string;
}

type Matrix = readonly [number, number, number, number, number, number];

const times = (m: Matrix, n: Matrix): Matrix => [
  m[0] * n[0] + m[2] * n[1],
  m[1] * n[0] + m[3] * n[1],
  m[0] * n[2] + m[2] * n[3],
  m[1] * n[2] + m[3] * n[3],
  m[0] * n[4] + m[2] * n[5] + m[4],
  m[1] * n[4] + m[3] * n[5] + m[5],
];

const at = (m: Matrix, x: number, y: number): Point =>
  point(m[0] * x + m[2] * y + m[4], m[1] * x + m[3] * y + m[5]);

interface State {
  readonly matrix: Matrix;
  readonly clip: PdfPath['clip'];
}

/** Reads every page of a PDF with pdf.js, which knows nothing of how the file was written. */
export async function readPdf(bytes: Uint8Array): Promise<readonly ReadPage[]> {
  const task = getDocument({ data: Uint8Array.from(bytes), verbosity: 0, fontExtraProperties: true });
  const document = await task.promise;
  const pages: ReadPage[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const [, , width = 0, height = 0] = page.view;
    const { fnArray, argsArray } = await page.getOperatorList();
    const { items } = await page.getTextContent();
    const text = items.map((item) => ('str' in item ? item.str : '')).join('\n');
    pages.push({ width, height, text, paths: pathsOf(fnArray, argsArray, height) });
  }
  await task.destroy();
  return pages;
}

function pathsOf(names: readonly number[], args: readonly unknown[][], height: number): readonly PdfPath[] {
  const mm = 25.4 / 72;
  // Units with y up become millimetres with y down.
  let state: State = { matrix: [mm, 0, 0, -mm, 0, height * mm], clip: undefined };
  const saved: State[] = [];
  const tags: string[] = [];
  const paths: PdfPath[] = [];
  let clipNext = false;
  for (const [i, name] of names.entries()) {
    const given = args[i] ?? [];
    if (name === OPS.save) saved.push(state);
    else if (name === OPS.restore) state = saved.pop() ?? state;
    else if (name === OPS.transform)
      state = { ...state, matrix: times(state.matrix, given as unknown as Matrix) };
    else if (name === OPS.beginMarkedContent) tags.push((given[0] as { name: string }).name);
    else if (name === OPS.beginMarkedContentProps) tags.push(String(given[0]));
    else if (name === OPS.endMarkedContent) tags.pop();
    else if (name === OPS.clip || name === OPS.eoClip) clipNext = true;
    else if (name === OPS.constructPath) {
      const [data] = given[1] as [Float32Array | null];
      const { curves, closed } = curvesOf(data ?? new Float32Array(), state.matrix);
      if (clipNext) state = { ...state, clip: boxOf(curves) };
      else paths.push({ tag: tags.at(-1), curves, closed, clip: state.clip });
      clipNext = false;
    }
  }
  return paths;
}

/** How pdf.js writes a path: the number of a step, then its coordinates. */
const steps = { move: 0, line: 1, cubic: 2, quadratic: 3, close: 4 };

function curvesOf(data: Float32Array, matrix: Matrix) {
  const curves: Curve[] = [];
  let from = point(0, 0);
  let closed = false;
  for (let i = 0; i < data.length; ) {
    const step = data[i++];
    const next = (): Point => at(matrix, data[i++] ?? Number.NaN, data[i++] ?? Number.NaN);
    if (step === steps.close) closed = true;
    else if (step === steps.move) from = next();
    else if (step === steps.line) {
      const to = next();
      curves.push({ kind: 'line', from, to });
      from = to;
    } else if (step === steps.cubic) {
      const [handle1, handle2, to] = [next(), next(), next()];
      curves.push({ kind: 'cubic', from, handle1, handle2, to });
      from = to;
    } else throw new Error(`unknown step ${step}`);
  }
  return { curves, closed };
}

function boxOf(curves: readonly Curve[]): PdfPath['clip'] {
  const xs = curves.flatMap(({ from, to }) => [from.x, to.x]);
  const ys = curves.flatMap(({ from, to }) => [from.y, to.y]);
  return [point(Math.min(...xs), Math.min(...ys)), point(Math.max(...xs), Math.max(...ys))];
}
