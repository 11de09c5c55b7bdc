import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { bodiceChoices } from '../../drafts/bodice/choices.ts';
import { bodiceRules } from '../../drafts/bodice/rules.ts';
import { foundationChoices } from '../../drafts/foundation/choices.ts';
import { foundationRules, neckRules } from '../../drafts/foundation/rules.ts';
import { insertChoices } from '../../drafts/insert/choices.ts';
import { insertRules } from '../../drafts/insert/rules.ts';
import { liningChoices } from '../../drafts/lining/choices.ts';
import { liningRules } from '../../drafts/lining/rules.ts';
import { openingChoices } from '../../drafts/opening/choices.ts';
import { openingRules } from '../../drafts/opening/rules.ts';
import { skirtRules } from '../../drafts/skirt/rules.ts';
import { skirt } from '../../drafts/skirt/skirt.ts';
import { sleeveChoices } from '../../drafts/sleeve/choices.ts';
import { sleeveRules } from '../../drafts/sleeve/rules.ts';
import { trialChoices } from '../../drafts/trial/choices.ts';
import { trialRules } from '../../drafts/trial/rules.ts';
import { workroomRules } from '../../drafts/workroom-rules.ts';
import {
  fittedLevels,
  mostAtSeam,
  oneSided,
  plainChangeNames,
  plainChanges,
} from '../../engine/body/fitting.ts';
import { evaluate } from '../../engine/evaluate.ts';
import type { Garment } from '../../engine/pattern/garment.ts';
import type { Rule } from '../../engine/pattern/rule.ts';
import type { Choice } from '../../engine/pattern/styling.ts';
import { commonPractice } from '../../engine/sources.ts';
import { belt } from './belt.ts';
import { drafted, shippedBodies, shippedBody } from './drafted.ts';
import { bandsPage, bandTables, readBandsPage } from './pages/bands.ts';
import { allSteps, headingsOn, rewritten } from './pages/written-pages.ts';

/** What a page in drafts/ has to tell of. */
interface Page {
  readonly folder: string;
  readonly rules: Readonly<Record<string, Rule>>;
  readonly choices: readonly Choice[];
}

const front: Page = { folder: '', rules: workroomRules, choices: [] };
const lessons: readonly Page[] = [
  { folder: 'foundation/', rules: { ...foundationRules, ...neckRules }, choices: foundationChoices },
  { folder: 'trial/', rules: trialRules, choices: trialChoices },
  { folder: 'bodice/', rules: bodiceRules, choices: bodiceChoices },
  { folder: 'insert/', rules: insertRules, choices: insertChoices },
  { folder: 'straps/', rules: {}, choices: [] },
  { folder: 'sleeve/', rules: sleeveRules, choices: sleeveChoices },
  { folder: 'skirt/', rules: skirtRules, choices: skirt.choices },
  { folder: 'lining/', rules: liningRules, choices: liningChoices },
  { folder: 'opening/', rules: openingRules, choices: openingChoices },
  { folder: 'fitting/', rules: {}, choices: [] },
  { folder: 'sides/', rules: {}, choices: [] },
];
const pages = [front, ...lessons];

const urlOf = ({ folder }: Page): URL => new URL(`../../drafts/${folder}README.md`, import.meta.url);
const textOf = (page: Page): string => readFileSync(urlOf(page), 'utf8');
/** A page without its line breaks, so that a phrase may run over one. */
const flowing = (page: Page): string => textOf(page).replace(/\s+/g, ' ');
const matches = (text: string, pattern: RegExp): readonly string[] =>
  [...text.matchAll(pattern)].map(([, found = '']) => found);
const linksOf = (page: Page): readonly string[] => matches(textOf(page), /\]\(([^)#\s]+)\)/g);

const allRules = new Map(pages.flatMap(({ rules }) => Object.values(rules)).map((rule) => [rule.id, rule]));

/** A rule as a page writes it: "B1 15 mm", "B9 2°", "B13 0.27". */
function written({ id, value, unit }: Rule): string {
  const suffix = unit === 'mm' ? ' mm' : unit === 'degrees' ? '°' : '';
  return `${id} ${value}${suffix}`;
}

/** The beginning of a choice's row: its name, default and range, or its words. */
function row(choice: Choice): string {
  if (choice.kind === 'word')
    return `| \`${choice.name}\` | ${choice.default} | ${choice.words.join(', ')} |`;
  const unit = choice.default !== 'auto' && choice.unit === 'mm' ? ' mm' : '';
  return `| \`${choice.name}\` | ${choice.default}${unit} | ${choice.min} to ${choice.max} |`;
}

/** The rows of the table under a heading, each by what its first cell names. */
const namedInTable = (page: Page, heading: string): readonly string[] =>
  matches(textOf(page).split(`## ${heading}\n`)[1]?.split('\n## ')[0] ?? '', /^\| `([^`]+)` \|/gm);

const sources = ['drafts', 'engine', 'cli'].map((root) => {
  const folder = fileURLToPath(new URL(`../../${root}`, import.meta.url));
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts'))
    .map((file) => readFileSync(`${folder}/${file}`, 'utf8'))
    .join('\n');
});

const steps = allSteps();

const body = shippedBody('leading-lady');
const made = [
  {},
  { opening: 'side' },
  { opening: 'side', sleeve: 'none', inside: 'faced', necklineGathers: 'fixed' },
  { shoulder: 'whole', front: 'plain', sleeve: 'plain' },
  { shoulder: 'whole', front: 'plain', sleeve: 'none', inside: 'faced' },
  { shoulder: 'whole', front: 'plain', centreFront: 'parted', sleeve: 'plain', sleeveTo: 'wrist' },
].map((styling) => drafted('dress', body, styling).garment);
const ofTwoSides = drafted('dress', { ...body, fitting: [{ 'shorten strap': 1, side: 'left' }] }).garment;

const seamsOf = ({ seams }: Garment): readonly string[] => seams.map(({ name }) => name);
const namesIn = (garment: Garment): readonly string[] => [
  ...seamsOf(garment),
  ...garment.joins.map(({ name }) => name),
  ...garment.girths.map(({ level }) => level),
  ...garment.pieces.flatMap(({ name, edges }) => [name, ...edges.map((edge) => edge.name)]),
];
const names = new Set([...made, ofTwoSides].flatMap(namesIn));

describe.each(pages)('the page drafts/$folder', (page) => {
  it('gives every rule of its draft with the value the rule has now', () => {
    const text = flowing(page);
    const missing = Object.values(page.rules)
      .map(written)
      .filter((rule) => !new RegExp(`\\b${rule.replaceAll('.', '\\.')}(?!\\.?\\d)`).test(text));
    expect(missing).toEqual([]);
  });

  it('names no rule that does not exist, and gives none another value', () => {
    const letters = [...new Set([...allRules.keys()].map(([letter]) => letter))].join('');
    const said = [
      ...flowing(page).matchAll(new RegExp(`\\b([${letters}]\\d{1,2})\\b(?: (-?\\d+(?:\\.\\d+)?))?`, 'g')),
    ];
    const wrong = said.filter(([, id = '', value]) => {
      const rule = allRules.get(id);
      return !rule || (value !== undefined && Number(value) !== rule.value);
    });
    expect(wrong.map(([words]) => words)).toEqual([]);
  });

  it('gives the source of every rule that has one', () => {
    const text = flowing(page);
    const missing = Object.values(page.rules).filter(
      ({ source }) => source !== commonPractice && !text.includes(source),
    );
    expect(missing.map(({ id, source }) => `${id}: ${source}`)).toEqual([]);
  });

  it('lists the choices of its draft, no other, with default and range', () => {
    expect(page.choices.map(row).filter((line) => !textOf(page).includes(line))).toEqual([]);
    expect(namedInTable(page, 'Choices').toSorted()).toEqual(page.choices.map(({ name }) => name).toSorted());
  });

  it('names every file of its folder, and links only to what is there', () => {
    const links = linksOf(page);
    expect(
      links.filter((link) => !link.startsWith('http') && !existsSync(new URL(link, urlOf(page)))),
    ).toEqual([]);
    const files = readdirSync(new URL('.', urlOf(page))).filter((file) => file.endsWith('.ts'));
    expect(files.filter((file) => !links.includes(file))).toEqual([]);
  });

  it('quotes only names that the code or a drafted garment has', () => {
    const text = textOf(page)
      .replace(/^```[\s\S]*?^```/gm, '')
      .replace(/\s+/g, ' ');
    const quoted = matches(text, /`([^`]+)`/g).filter((name) => !/^(bodkin|npm|npx) |^[A-Z]\d+ /.test(name));
    const unknown = quoted.filter((name) => !names.has(name) && !sources.some((code) => code.includes(name)));
    expect(unknown).toEqual([]);
  });

  it('has the steps of its draft as they are taken now (else: npm run pages)', () => {
    expect(rewritten(textOf(page), steps)).toBe(textOf(page));
  });

  it('can be read in one sitting', () => {
    const lines = textOf(page).split('\n').length;
    expect(lines).toBeGreaterThanOrEqual(60);
    expect(lines).toBeLessThanOrEqual(200);
  });
});

describe('the pages of the drafts together', () => {
  it('tell the steps under every heading, each on one page', () => {
    const told = lessons.flatMap((page) => headingsOn(textOf(page)));
    const headings = new Set(steps.flat().map(({ heading }) => heading ?? 'none'));
    expect(told.toSorted()).toEqual([...headings].toSorted());
  });

  it('have a lesson for every folder, reached from the front page', () => {
    const folders = readdirSync(new URL('.', urlOf(front)), { withFileTypes: true })
      .filter((entry) => entry.isDirectory())
      .map(({ name }) => `${name}/`);
    expect(lessons.map(({ folder }) => folder).toSorted()).toEqual(folders.toSorted());
    const links = linksOf(front);
    expect(lessons.filter(({ folder }) => !links.includes(`${folder}README.md`))).toEqual([]);
  });

  it('name every seam of the dress', () => {
    const quoted = new Set(lessons.flatMap((page) => matches(textOf(page), /`([^`\n]+)`/g)));
    expect(made.flatMap(seamsOf).filter((name) => !quoted.has(name))).toEqual([]);
  });

  it('tell every change a fitting knows, how much of it there may be, and on which sides', () => {
    const text = textOf({ ...front, folder: 'fitting/' });
    const sided = { may: 'one or both', must: 'one', none: 'both' } as const;
    const rows = plainChangeNames.map(
      (kind) => `| \`${kind}\` | ${plainChanges[kind].most} mm | ${sided[oneSided[kind] ?? 'none']} |`,
    );
    const seams = Object.entries(fittedLevels).map(
      ([seam, levels]) =>
        `| \`${seam}\` | ${levels.join(', ')} | ${mostAtSeam['take in']} mm | ${mostAtSeam['let out']} mm |`,
    );
    expect([...rows, ...seams].filter((line) => !text.includes(line))).toEqual([]);
  });
});

describe('the page of bands', () => {
  it('has every band as it is now, with its source (else: npm run pages)', () => {
    expect(readBandsPage()).toBe(bandsPage());
  });

  it('has every figure that a garment is looked at for', () => {
    const known = bandTables.flatMap(([, bands]) => Object.values(bands).map(({ name }) => name));
    const halfless = (name: string) =>
      name
        .replace(/^(front|back) (armhole(,| notch,))/, '$2')
        .replace(/^cap on (front|back) armhole$/, 'cap on armhole')
        .replace(/^.* (princess edge leans|grain upright)/, '$1')
        .replace(/^strap, (inner|outer) edge on its path$/, 'strap edge, longer than its path')
        .replace(/^(cap top|sleeve grain) in front/, 'cap top and sleeve grain in front')
        .replace(
          /^waist at centre front below the (princess|side) seam$/,
          'waist at centre front below princess',
        );
    const looked = [...made, drafted('trial', body, { sleeve: 'plain' }).garment].flatMap(({ shapes }) =>
      shapes.map(({ name }) => name),
    );
    const unknown = looked.filter((name) => !known.some((band) => band.startsWith(halfless(name))));
    expect([...new Set(unknown)]).toEqual([]);
  });
});

describe('the draft that the front page teaches from', () => {
  it.each(shippedBodies)('is all true for %s', (name) => {
    const result = evaluate(belt, shippedBody(name));
    expect(result.ok).toBe(true);
    if (result.ok)
      expect(result.value.report.issues.filter(({ severity }) => severity === 'error')).toEqual([]);
  });
});
