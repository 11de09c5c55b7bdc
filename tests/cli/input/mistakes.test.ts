import { describe, expect, it } from 'vitest';
import { beltFolder, type Change, leadingLady } from '../own-draft/changed-belt.ts';
import { bodkin } from '../session.ts';

const belt = beltFolder();

interface Mistake {
  readonly change: Change;
  /** Text on the line that should be named. */
  readonly at: string;
  readonly says: RegExp;
}

/** What a compiler of types would say too, and the program must say to whoever has none. */
const mistakes: Readonly<Record<string, Mistake>> = {
  'a kind of relation there is not': {
    change: [
      "isLong('it is evenly deep', [back], styling.beltDepth)",
      "{ kind: 'lenght', name: 'it is evenly deep', terms: [], mm: 60 } as never",
    ],
    at: 'it is evenly deep',
    says: /“it is evenly deep” is a relation of the kind “lenght”.*mean “length”/,
  },
  'a point that nothing bears': {
    change: [
      "sketch.line('centre back', backTop, backBottom)",
      "sketch.line('centre back', backTop, 'back botom')",
    ],
    at: 'back botom',
    says: /names the point “back botom”.*mean “back bottom”/,
  },
  'a curve that nothing bears': {
    change: ["isLong('the bottom fits below it', [lower]", "isLong('the bottom fits below it', ['botom']"],
    at: 'the bottom fits below it',
    says: /names the curve “botom”.*mean “bottom”/,
  },
  'a relation with a name that was put together': {
    change: ["isLong('the bottom fits below it', [lower]", "isLong('the ' + lower + ' fits', ['botom']"],
    at: "isLong('the ' + lower",
    says: /“the bottom fits” names the curve “botom”/,
  },
  'a chain of curves that is none': {
    change: [
      "isLong('the bottom fits below it', [lower]",
      "isLong('the bottom fits below it', lower as never",
    ],
    at: 'the bottom fits below it',
    says: /“the bottom fits below it” is not written as its kind should be/,
  },
  'a relation that is nothing': {
    change: ["isLong('it is evenly deep', [back], styling.beltDepth)", 'undefined as never'],
    at: 'sketch.relation(',
    says: /relation is asked for that is nothing/,
  },
  'a wish about a curve that nothing bears': {
    change: ['fairLines(sketch, [upper, lower])', "fairLines(sketch, [upper, 'lowr'])"],
    at: 'lowr',
    says: /“lowr bends little” names the curve “lowr”/,
  },
  'the same point twice': {
    change: ["sketch.point('back bottom'", "sketch.point('back top'"],
    at: "sketch.point('back top', point(bottom",
    says: /already has a point called “back top”/,
  },
  'the same relation twice': {
    change: ["isLong('the bottom fits below it'", "isLong('the top is half the waist'"],
    at: 'isLong(',
    says: /already has a relation called “the top is half the waist”/,
  },
  'bounds that leave no room': {
    change: ['const frontTop =', "sketch.length('dart', 5, { min: 9, max: 3 });\n      const frontTop ="],
    at: "sketch.length('dart'",
    says: /bounds of “dart” leave it no room: 9 to 3/,
  },
  'an angle in degrees': {
    change: ["'bottom square to the fold', Math.PI", "'bottom square to the fold', 180"],
    at: "'bottom square to the fold', 180",
    says: /has the angle 180: angles are radians/,
  },
  'a choice there is not, in a place': {
    change: ['point(0, styling.beltDepth)', "point(0, Reflect.get(styling, 'beltDeep') as never)"],
    at: "sketch.fixed('front bottom'",
    says: /“front bottom” has no finite place: 0, (undefined|NaN)\./,
  },
  'a formula that cannot be read': {
    change: ['{size.waistGirth} + ease', '{size.waistGirth} ease'],
    at: 'Half belt, top',
    says: /bracket is not closed before here.*>>>/,
  },
  'a word that computes nothing, in brackets': {
    change: ['of (hip girth', 'of (sqare of hip girth'],
    at: 'Girth there',
    says: /“?"?of"? cannot compute here|words name no value/,
  },
  'a formula that adds a number to a length': {
    change: ['{size.waistGirth} + ease', '{size.waistGirth} + 3 + ease'],
    at: 'Half belt, top',
    says: /joins a length \(mm\) and a plain number/,
  },
  'a measurement there is not, in a sentence': {
    change: ['size.waistGirth} + ease', "Reflect.get(size, 'waistGirt') as never} + ease"],
    at: 'Half belt, top',
    says: /given nothing: no measurement, choice, rule or step has the name/,
  },
  'a number typed out in a sentence': {
    change: ['size.waistGirth} + ease', '740 as never} + ease'],
    at: 'Half belt, top',
    says: /given 740, which has no origin/,
  },
  'two rule tables of one letter': {
    change: [
      'const share =',
      `const other = ruleTable('T', { seam: [3, 'mm', 'what the turning takes', commonPractice] });
      mm\`Turning: depth \${choice.beltDepth} - \${other.seam}\`;
      const share =`,
    ],
    at: 'at this share of the way',
    says: /Two rules have the number T1: “what the turning takes” and “at this share of the way.*Give each ruleTable a letter/,
  },
  'a rule without a source': {
    change: ['    commonPractice,\n', ''],
    at: 'hipTakesOver:',
    says: /rule “hipTakesOver” \(T1\) has no source/,
  },
  'a rule in a unit there is not': {
    change: ["'share',", "'shares' as 'share',"],
    at: 'hipTakesOver:',
    says: /unit “shares”, which there is not/,
  },
  'a default out of its range': {
    change: ['default: 60', 'default: 600'],
    at: "name: 'beltDepth'",
    says: /“beltDepth” a default that it does not allow/,
  },
  'a choice declared twice': {
    change: ['[waistEase, depth,', '[waistEase, depth, depth,'],
    at: "name: 'beltDepth'",
    says: /choice “beltDepth” twice/,
  },
  'a measurement there is not, as what shapes it': {
    change: ["shapedBy: ['waistGirth'", "shapedBy: ['waistGirt' as 'waistGirth'"],
    at: 'waistGirt',
    says: /“waistGirt”, which is no measurement.*mean “waistGirth”/,
  },
  'a curve of the solution that there is not': {
    change: ['edge(upper, 2)', "edge('uper', 2)"],
    at: "edge('uper', 2)",
    says: /no curve called “uper”/,
  },
  'a plan that cuts nothing': {
    change: ['return (solution) => {', 'const cut = (solution) => {'],
    at: 'drawGarment({ name',
    says: /should return a function that cuts its pieces/,
  },
  'pieces without the rest': {
    change: ['return { ok: true, value, issues: [] }', 'return value as never'],
    at: 'drawGarment({ name',
    says: /should return \{ ok: true, value/,
  },
  'a piece without its lines': {
    change: ['lines: [],', 'lines: null as never,'],
    at: 'drawGarment({ name',
    says: /gives the piece “belt” no list of lines: write \[\] where there are none/,
  },
  'no list of girths': {
    change: [
      'return { ok: true, value,',
      'return { ok: true, value: { ...value, girths: undefined as never },',
    ],
    at: 'drawGarment({ name',
    says: /returns no list of girths/,
  },
  'a stage of sewing there is not': {
    change: ['finish: [\n', 'finnish: [\n'],
    at: 'finnish: [',
    says: /stage “finnish”.*mean “finish”/,
  },
  'an edge without its allowance': {
    change: ['styling.seamAllowance, rank)', "Reflect.get(styling, 'seamAlowance') as never, rank)"],
    at: "['top', 'centre back'",
    says: /“belt”, “top”, pieces, edges, allowance: .*expected number/,
  },
  'an edge that becomes what there is not': {
    change: ["turn: 'fold'", "turn: 'folded' as 'fold'"],
    at: "name: 'centre front'",
    says: /“centre front”, pieces, edges, turn: /,
  },
  'a claim about a shape that lacks its line': {
    change: ['shapes: []', "shapes: [{ name: 'bend', kind: 'tightest bend', outside: 'tight' } as never]"],
    at: "name: 'bend'",
    says: /“bend”, shapes: it lacks some of what a measure of its kind is taken on/,
  },
  'a kind of shape there is not': {
    change: ['shapes: []', "shapes: [{ name: 'bend', kind: 'tightest bent', outside: 'tight' } as never]"],
    at: "name: 'bend'",
    says: /“bend”, shapes, kind: .*"tightest bend"/,
  },
  'a finish there is not': {
    change: ["finish: 'graded' as const", "finish: 'gradet' as never"],
    at: "title: 'Sew the belt",
    says: /“Sew the belt to its lining and turn it”, sewing, finish: /,
  },
  'a piece that is cut of nothing': {
    change: ["cut: [...cutOnFold('self'), ...cutOnFold('lining')]", 'cut: []'],
    at: "piece: 'belt', edge }",
    says: /“belt”, pieces, cut: /,
  },
  'a curve end there is not': {
    change: [
      'endOf(upper), startOf(back), 1)',
      "{ curve: upper, end: 'finish' as 'end' }, startOf(back), 1)",
    ],
    at: "square('top square to the back'",
    says: /names the end “finish” of “top”/,
  },
  'a draw that answers nothing': {
    change: [
      'draw: (body, chosen, solver) =>\n    drawGarment(',
      'draw: (body, chosen, solver) =>\n    void drawGarment(',
    ],
    at: 'draw: (body',
    says: /draw should return what drawGarment does/,
  },
  'a draw that lets its garment be waited for': {
    change: ['draw: (body, chosen, solver) =>', 'draw: async (body, chosen, solver): Promise<never> =>'],
    at: 'draw: async',
    says: /draw should return what drawGarment does/,
  },
  'an import of what is not there': {
    change: ['import { grainline }', 'import { grainlin as grainline }'],
    at: 'grainlin as',
    says: /No matching export/,
  },
  'a product with a star': {
    change: ['} of (hip girth', '} * (hip girth'],
    at: 'Girth there',
    says: /no meaning in a formula: times is written x or "of"/,
  },
  'a length typed with its unit': {
    change: ['/ 2`;', '/ 2 + 3 cm`;'],
    at: 'Half belt, top',
    says: /A length is never typed: make it a choice or a rule/,
  },
  'a sentence without what computes it': {
    change: ['const share = ratio`', 'const share = `'],
    at: 'Girth there',
    says: /what is put in is a text, as of a step without mm, angle or ratio/,
  },
  'a step where its number should be': {
    change: ['point(top.value, 0)', 'point(top as never, 0)'],
    at: "sketch.point('back top'",
    says: /“back top” has no finite place: no number \(a step .* with \.value behind it\), 0/,
  },
  'a line to nothing': {
    change: ["'centre back', backTop, backBottom", "'centre back', backTop, undefined as never"],
    at: "'centre back', backTop",
    says: /“centre back” needs two points, each by the name/,
  },
  'a line to where it begins': {
    change: ["'centre back', backTop, backBottom", "'centre back', backTop, backTop"],
    at: "'centre back', backTop",
    says: /“centre back” begins and ends at the same point, “back top”/,
  },
  'a relation that is named last': {
    change: [
      "isLong('it is evenly deep', [back], styling.beltDepth)",
      "isLong([back] as never, styling.beltDepth as never, 'it is evenly deep' as never)",
    ],
    at: 'sketch.relation(',
    says: /A relation has no text for its name: the name stands first/,
  },
  'a relation that can never hold, with a name that was put together': {
    change: [
      "isLong('the bottom fits below it', [lower], bottom.value)",
      'isLong(`the $'.concat('{lower} fits`, [lower], -bottom.value)'),
    ],
    at: 'isLong(`the $',
    says: /“the bottom fits” .*cannot be had/,
  },
  'a seam of one edge that is no list': {
    change: ["const ref = [{ piece: 'belt', edge }]", "const ref = { piece: 'belt', edge }"],
    at: 'plainSeam(`belt, $',
    says: /sews the seam “belt, top” of what is no list of edges/,
  },
  'two seams of one name': {
    change: [
      "['top', 'centre back', 'bottom'].map(toItself)",
      "['top', 'top', 'centre back', 'bottom'].map(toItself)",
    ],
    at: 'plainSeam(`belt, $',
    says: /more than one seam “belt, top”/,
  },
  'cutting that is to be waited for': {
    change: ['return (solution) => {', 'return async (solution) => {'],
    at: 'drawGarment({ name',
    says: /should return \{ ok: true, .*It is there at once, so it has no “async”/,
  },
  'a function that calls itself without end': {
    change: [
      'const frontTop =',
      'const deep = (): number => deep() + 1;\n      deep();\n      const frontTop =',
    ],
    at: 'const deep',
    says: /A function calls itself without end\./,
  },
  'something asked of nothing': {
    change: ['const frontTop =', '(null as unknown as DOMRect).width;\n      const frontTop ='],
    at: '(null as unknown',
    says: /“width” is asked of something that is nothing here \(null\)/,
  },
  'a function that there is not': {
    change: ["sketch.line('centre back'", "(sketch as unknown as typeof table).lines('centre back'"],
    at: "lines('centre back'",
    says: /“sketch\.lines” is no function here/,
  },
  'a name that is not made': {
    change: ['const frontTop =', 'depht;\n      const frontTop ='],
    at: 'depht;',
    says: /“depht” is neither made nor imported/,
  },
  'a text that is thrown': {
    change: ['const frontTop =', "throw 'no cloth';\n      const frontTop ="],
    at: "throw 'no cloth'",
    says: /throws “no cloth”, a text\. Write throw new Error/,
  },
  'nothing that is thrown': {
    change: ['const frontTop =', 'throw undefined;\n      const frontTop ='],
    at: 'draw: (body',
    says: /throws what is no Error \(undefined\)\. Write throw new Error/,
  },
  'an end of the program': {
    change: ['const frontTop =', 'process.exit(0);\n      const frontTop ='],
    at: 'process.exit(0)',
    says: /calls process\.exit, which would end the program/,
  },
  'an export that lacks a field': {
    change: ["  shapedBy: ['waistGirth', 'hipGirth', 'waistToHip'],\n", ''],
    at: 'export const belt',
    says: /The draft “belt” lacks shapedBy\. Write shapedBy: a list of measurements/,
  },
  'an export that has something else for a name': {
    change: ["name: 'belt',\n  title", 'name: 7 as never,\n  title'],
    at: 'name: 7',
    says: /The draft has a number for “name”\. Write name: 'my-apron'/,
  },
  'an export whose measurements are a text': {
    change: ["shapedBy: ['waistGirth', 'hipGirth', 'waistToHip']", "shapedBy: 'waistGirth' as never"],
    at: "shapedBy: 'waistGirth'",
    says: /has a text for “shapedBy”/,
  },
  'a choice that is none': {
    change: ['[waistEase, depth,', '[waistEase, depth, undefined as never,'],
    at: 'export const belt',
    says: /has something in “choices” that is none of them/,
  },
  'an export of something else': {
    change: ['export default belt;', 'export default choices.length;'],
    at: 'export default choices',
    says: /exports no draft: write “export default defineDraft/,
  },
  'what is no TypeScript': {
    change: ["ruleTable('T', {", "ruleTable('T', {{"],
    at: "ruleTable('T', {{",
    says: /Cannot load the draft/,
  },
};

/** What is drawn, and does not hold together. */
const untrue: Readonly<Record<string, Mistake>> = {
  'an edge in no seam': {
    change: ["['top', 'centre back', 'bottom'].map(toItself)", "['top', 'centre back'].map(toItself)"],
    at: "sketch.curve('bottom'",
    says: /"bottom" of belt has an allowance, but no seam sews it/,
  },
  'a seam of an edge that is not there': {
    change: ["'bottom'].map(toItself)", "'bottom', 'botom'].map(toItself)"],
    at: "'botom'",
    says: /speaks of the edge "botom" of the piece "belt"/,
  },
  'a notch on an edge that is not there': {
    change: ["edge: 'top', at: 0", "edge: 'topp', at: 0"],
    at: "edge: 'topp'",
    says: /speaks of the edge "topp"/,
  },
  'a girth round an edge that is not there': {
    change: ["edge: 'top', times: 2", "edge: 'tops', times: 2"],
    at: "edge: 'tops'",
    says: /speaks of the edge "tops"/,
  },
  'a join at a seam that is not there': {
    change: ["corner(line, 'centre front')", "corner(line, 'center front')"],
    at: "'center front'",
    says: /speaks of the edge "center front"/,
  },
  'a step that sews a seam that is not there': {
    change: ['sews: seams.map(({ name }) => name),', "sews: [...seams.map(({ name }) => name), 'hem'],"],
    at: "'hem'",
    says: /speaks of the seam “hem”/,
  },
};

describe('a mistake in a draft of one’s own', () => {
  const told = async (name: string, { change, at, says }: Mistake, code: number): Promise<void> => {
    const { file, lineOf } = await belt(name.replaceAll(/\W/g, '-'), change);
    const ran = await bodkin(['walk', 'belt', '--draft', file, '--body', leadingLady]);
    const line = ran.err.split('\n').find((words) => says.test(words));
    expect(line ?? ran.err).toMatch(says);
    expect(line).toContain(`${file}:${lineOf(at)}: `);
    expect(ran.code).toBe(code);
    expect(ran.err).not.toMatch(/ is not a function$|is not a function or|Cannot read propert|^\s+at /m);
  };

  it.each(Object.entries(mistakes))('is told with its line: %s', (name, mistake) => told(name, mistake, 2));

  it.each(Object.entries(untrue))('fails the draft with its line: %s', (name, mistake) =>
    told(name, mistake, 1),
  );

  it('is data for other programs', async () => {
    const { file, lineOf } = await belt('data', [
      "'centre back', backTop, backBottom",
      "'centre back', backTop, 'b'",
    ]);
    const ran = await bodkin(['walk', 'belt', '--draft', file, '--body', leadingLady, '--json']);
    expect(JSON.parse(ran.out).issues).toEqual([
      {
        code: 'draft-mistake',
        severity: 'error',
        path: 'centre back',
        message: expect.stringContaining('“b”'),
        limits: null,
        source: { file, line: lineOf("backTop, 'b'") },
      },
    ]);
  });

  it('leaves what the draft prints itself beside the results', async () => {
    const { file } = await belt('prints', [
      'const frontTop =',
      "console.log('half', top.value);\n      const frontTop =",
    ]);
    const ran = await bodkin(['walk', 'belt', '--draft', file, '--body', leadingLady, '--json']);
    expect(JSON.parse(ran.out)).toMatchObject({ garment: 'belt', ok: true });
  });

  it('is told of what the draft throws itself', async () => {
    const { file, lineOf } = await belt('thrown', [
      'const frontTop =',
      "throw new Error('no cloth');\n      const frontTop =",
    ]);
    const ran = await bodkin(['walk', 'belt', '--draft', file, '--body', leadingLady]);
    expect(ran).toMatchObject({ code: 2, err: `error: ${file}:${lineOf('no cloth')}: no cloth\n` });
  });
});
