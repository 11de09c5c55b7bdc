import { readFile } from 'node:fs/promises';
import { inPackage } from '../beside.ts';
import { readFonts } from './fonts.ts';

/** Pixels for each mm of a drawing. */
const FINE = 2;

/** Turns drawings into pictures. */
export type PngWriter = (svg: string) => Uint8Array;

let ready: Promise<PngWriter> | undefined;

/**
 * What turns an SVG into a PNG: resvg, as WebAssembly, so that it is the same picture on every machine; its letters are those
 * of every PDF. Loaded where it is first asked for, for hardly any command does.
 */
export function pngWriter(): Promise<PngWriter> {
  ready ??= load();
  return ready;
}

async function load(): Promise<PngWriter> {
  const [{ initWasm, Resvg }, code, { regular, bold }] = await Promise.all([
    import('@resvg/resvg-wasm'),
    rasteriser(),
    readFonts(),
  ]);
  await initWasm(code);
  return (svg) => {
    const drawing = new Resvg(svg, {
      fitTo: { mode: 'zoom', value: FINE },
      background: '#fff',
      font: {
        fontBuffers: [regular, bold],
        defaultFontFamily: 'Source Sans 3',
        sansSerifFamily: 'Source Sans 3',
      },
    });
    try {
      const image = drawing.render();
      const bytes = image.asPng();
      image.free();
      return bytes;
    } finally {
      drawing.free();
    }
  };
}

/** The code lies beside the program where it is installed, in its own package where it runs from the sources. */
const rasteriser = async (): Promise<Uint8Array> =>
  readFile(inPackage('.dist/resvg.wasm')).catch(async () =>
    readFile(new URL(import.meta.resolve('@resvg/resvg-wasm/index_bg.wasm'))),
  );
