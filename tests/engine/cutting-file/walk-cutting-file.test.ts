import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { garments } from '../../../drafts/index.ts';
import { cutGarment } from '../../../engine/cutting-file/cutting-file.ts';
import { evaluate } from '../../../engine/evaluate.ts';
import { provenCuttingFile, provenGradedCuttingFile } from '../../../engine/proven-cutting-file.ts';
import { walkCuttingFile } from '../../../engine/reading/cutting-file/walk-cutting-file.ts';
import { chartOf, draftOf, gradedBy, shippedChart } from '../grading/charts.ts';

const lady = parse(readFileSync('measurements/leading-lady.yaml', 'utf8'));

const drafted = (name: keyof typeof garments, styling: object = {}) => {
  const made = evaluate(garments[name], lady, styling);
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  return made.value;
};

const flavours = ['polylines', 'splines'] as const;

describe.each(flavours)('a cutting file of %s, walked before it is handed over', (flavour) => {
  it.each(Object.keys(garments) as (keyof typeof garments)[])('holds what was drafted: %s', (name) => {
    for (const notchType of ['slit', 'wedge'])
      expect(provenCuttingFile(drafted(name, { notchType }), flavour).issues).toEqual([]);
  });

  it('holds every size of a grade', () => {
    const bodice = draftOf('bodice');
    const chart = chartOf(shippedChart('workshop-stock.yaml'), bodice);
    const { sizes } = gradedBy(bodice, { ...chart, rows: chart.rows.slice(0, 3) });
    expect(sizes).toHaveLength(3);
    expect(provenGradedCuttingFile(sizes, flavour).issues).toEqual([]);
  });

  const made = drafted('skirt');
  const { text, blocks } = cutGarment(made, flavour);
  const codesOf = (file: string): readonly string[] => [
    ...new Set(walkCuttingFile([{ ...made, blocks }], file, flavour).map(({ code }) => code)),
  ];

  /** The groups of the first thing drawn on a layer, from its kind to the next. */
  const firstOn = (layer: string): string => {
    const found = new RegExp(
      `0\\n[A-Z]+\\n(?:(?!0\\n)[^\\n]*\\n[^\\n]*\\n)*?8\\n${layer}\\n(?:(?!0\\n)[^\\n]*\\n[^\\n]*\\n)*`,
    ).exec(text);
    return found?.[0] ?? '';
  };

  it('is refused where a line was lost', () => {
    expect(codesOf(text.replace(firstOn('STITCH'), ''))).toContain('cutting-file-damaged');
    expect(codesOf('0\nSECTION\n2\nHEADER\n')).toContain('cutting-file-damaged');
    expect(codesOf('not a drawing')).toContain('cutting-file-damaged');
  });

  it('is refused where it is another size than the draft', () => {
    const larger = text.replace(
      /^( ?[12][01]\n)(-?[\d.]+)$/gm,
      (_, code, value) => `${code}${(Number(value) * 1.01).toFixed(4)}`,
    );
    expect(codesOf(larger)).toEqual(expect.arrayContaining(['cutting-file-off', 'test-square-wrong']));
  });

  it.skipIf(flavour === 'splines')(
    'is refused where one corner of one polyline lies 0.1 mm off, or is left out',
    () => {
      const curved = [...text.matchAll(/0\nPOLYLINE\n(?:(?!0\nSEQEND)[^\n]*\n[^\n]*\n)*/g)]
        .map(([line]) => ({ line, corners: line.match(/0\nVERTEX\n(?:(?!0\n)[^\n]*\n[^\n]*\n)*/g) ?? [] }))
        .find(({ line, corners }) => line.includes('\n8\nSTITCH\n') && corners.length > 4);
      const { line = '', corners = [] } = curved ?? {};
      const corner = corners[2] ?? '';
      // Along the line a corner may be moved, so that of the two one is across.
      const moved = ['10', '20'].flatMap((code) => {
        const aside = corner.replace(
          new RegExp(`\\n${code}\\n(\\S+)\\n`),
          (_, at) => `\n${code}\n${(Number(at) + 0.1).toFixed(6)}\n`,
        );
        expect(aside).not.toBe(corner);
        return codesOf(text.replace(line, line.replace(corner, aside)));
      });
      expect(moved).toContain('cutting-file-off');
      expect(codesOf(text.replace(line, line.replace(corner, '')))).toEqual(['cutting-file-off']);
    },
  );

  it('is refused where it does not say its unit', () => {
    expect(codesOf(text.replace('$INSUNITS\n70\n4\n', '$INSUNITS\n70\n1\n'))).toEqual(['test-square-wrong']);
  });

  it('is refused where a piece was inserted on another', () => {
    const [a, b] = [...text.matchAll(/\n2\n(\S+)\n10\n(\S+)\n20\n(\S+)\n30\n0\.0\n0\nATTRIB\n/g)];
    expect(a && b).toBeTruthy();
    const on = (b?.[0] ?? '').replace(`10\n${b?.[2]}\n20\n${b?.[3]}`, `10\n${a?.[2]}\n20\n${a?.[3]}`);
    expect(codesOf(text.replace(b?.[0] ?? '', on))).toEqual(['pieces-overlap']);
  });
});
