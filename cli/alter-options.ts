import { InvalidArgumentError, Option } from 'commander';
import { cupDifference, cupLetters } from '../engine/body/cup.ts';
import { paperWords } from '../engine/render/tiles/papers.ts';
import type { Unit } from '../engine/text/units.ts';
import { writtenLength } from '../engine/text/written-length.ts';

/** What `bodkin alter` was told, as read from the command line. */
export interface AlterOptions {
  readonly mmPerUnit?: number;
  readonly piece?: string;
  readonly edges?: readonly string[];
  readonly corner: number;
  readonly fold?: readonly string[];
  readonly hem?: readonly string[];
  readonly traced: 'stitching' | 'cutting';
  readonly allowance: number;
  readonly hemAllowance: number;
  readonly along?: readonly [string, string];
  readonly lines: number;
  readonly between?: readonly [string, string];
  readonly hinge?: string;
  readonly spread?: number;
  readonly gather?: number;
  readonly cupFrom?: string;
  readonly cupTo?: string;
  readonly whole?: true;
  readonly pivotDart?: Place;
  readonly dart?: string;
  readonly share: number;
  readonly short?: number;
  readonly lengthen?: number;
  readonly shorten?: number;
  readonly at?: Measure;
  readonly moveNotch?: readonly [string, Place];
  readonly mirror?: string;
  readonly partner?: readonly [string, string];
  readonly seam?: string;
  readonly name?: string;
  readonly wearer: string;
  readonly date?: string;
  readonly out?: string;
  readonly paper?: string;
  readonly units?: Unit;
  readonly json?: true;
}

/** So many mm, or such a share of the whole. */
export type Measure = { readonly mm: number } | { readonly share: number };

/** A place on an edge, measured from the end at which one comes to it clockwise. */
export interface Place {
  readonly edge: string;
  readonly at: Measure;
}

/** How the tracing is read. */
export const readingOptions = (): readonly Option[] => [
  new Option(
    '--mm-per-unit <mm>',
    'how large one unit of the drawing is; otherwise the 50-mm test square tells',
  ).argParser(between(0.0001, 1000)),
  new Option('--piece <name>', 'the outline of that name, where the drawing holds several'),
  new Option(
    '--edges <names>',
    'names for the edges, clockwise from the top left corner: top,side,hem,front',
  ).argParser(names),
  new Option('--corner <degrees>', 'how sharp a corner between two edges is')
    .argParser(between(2, 120))
    .default(25),
  new Option('--fold <edges>', 'edges that lie on a fold of the cloth').argParser(names),
  new Option('--hem <edges>', 'edges that are hemmed').argParser(names),
  new Option('--traced <line>', 'which line was traced; from a cutting line the allowance is taken off first')
    .choices(['stitching', 'cutting'])
    .default('stitching'),
  new Option('--allowance <length>', 'seam allowance to draw, and to take off a cutting line')
    .argParser(lengthBetween(0, 60))
    .default(12.7),
  new Option('--hem-allowance <length>', 'hem allowance to draw, and to take off')
    .argParser(lengthBetween(0, 100))
    .default(12.7),
];

/** What is done to the piece: one of these in one go. */
export const alteringOptions = (): readonly Option[] => [
  new Option('--along <edges>', 'the two edges that slash lines run between: top..hem').argParser(
    pairOf('edges', 'top..hem'),
  ),
  new Option('--between <notches>', 'slash only from this notch to that: gather start..gather end').argParser(
    pairOf('notches', 'gather start..gather end'),
  ),
  new Option('--lines <count>', 'how many slash lines').argParser(between(1, 60)).default(6),
  new Option('--hinge <edge>', 'keep the strips joined at this edge, and open the other one'),
  alteration(
    '--spread <length>',
    'slash and spread by so much in all: 40 (mm), or 1 1/2 in',
    lengthBetween(-500, 3000),
  ),
  alteration(
    '--gather <ratio>',
    'spread until the first slashed edge is so many times its seam',
    between(1, 6),
  ),
  alteration('--cup-from <letter>', 'spread from the cup it was made for ...', cup),
  new Option(
    '--cup-to <letter>',
    '... to this cup: half the difference in girth, for half a front',
  ).argParser(cup),
  new Option('--whole', 'the piece goes right across both sides: the whole difference in girth'),
  alteration(
    '--pivot-dart <edge@place>',
    'turn the dart to this place: side@60 (mm), side@2 3/8in or side@50%',
    place,
  ),
  new Option('--dart <edge>', 'a leg of the dart meant, where there are several'),
  new Option('--share <share>', 'how much of the dart to turn').argParser(between(0.01, 1)).default(1),
  new Option('--short <length>', 'draw the point of the dart so far short of the pin').argParser(
    lengthBetween(0, 100),
  ),
  alteration('--lengthen <length>', 'cut across and let down by so much', lengthBetween(0.1, 2000)),
  alteration('--shorten <length>', 'cut across and take up by so much', lengthBetween(0.1, 2000)),
  new Option('--at <level>', 'where to cut across, below the top: 120 (mm), 5in or 40%').argParser(measure),
  alteration('--move-notch <notch=edge@place>', 'set a notch elsewhere: bust=side@80', notchMove),
  alteration('--mirror <edge>', 'draw the other half, mirrored in this edge', (text) => text),
];

/** What comes out. */
export const outcomeOptions = (): readonly Option[] => [
  new Option(
    '--partner <file#edge>',
    'walk the altered edge along this one: bodice.svg#under bust',
  ).argParser(partner),
  new Option(
    '--seam <edge>',
    'the altered edge that is sewn to the partner; otherwise the first slashed one',
  ),
  new Option('--name <name>', 'what the piece is called; otherwise as its file').argParser(shortText),
  new Option('--wearer <name>', 'whom it is for').argParser(shortText).default('the wearer'),
  new Option('--date <text>', 'a date to print on the piece').argParser(shortText),
  new Option('--paper <paper>', `write a PDF too: ${paperWords}`),
  new Option('--out <folder>', 'where to write the piece and a report; otherwise only the figures are shown'),
];

/** The alterations there are, by the option that asks for each. */
const alterations = [
  'spread',
  'gather',
  'cupFrom',
  'pivotDart',
  'lengthen',
  'shorten',
  'moveNotch',
  'mirror',
] as const;

const nameOf = (flags: string): string => new Option(flags).attributeName();

const alteration = <T>(flags: string, says: string, read: (text: string) => T): Option =>
  new Option(flags, says).argParser(read).conflicts(alterations.filter((other) => other !== nameOf(flags)));

const between =
  (least: number, most: number) =>
  (text: string): number => {
    const value = text.trim() === '' ? Number.NaN : Number(text);
    if (!(value >= least && value <= most))
      throw new InvalidArgumentError(`It should be a number from ${least} to ${most}.`);
    return value;
  };

/** A length in mm, or with its unit behind it. */
const lengthBetween =
  (least: number, most: number) =>
  (text: string): number => {
    const value = writtenLength(text)?.value;
    if (value === undefined || value < least || value > most)
      throw new InvalidArgumentError(
        `It should be a length from ${least} to ${most} mm, such as 40, 4 cm or 1 1/2 in.`,
      );
    return value;
  };

function names(text: string): readonly string[] {
  const list = text.split(',').map((name) => name.trim());
  if (list.some((name) => name === '' || name.length > 60))
    throw new InvalidArgumentError('It should be names with commas between them.');
  return list;
}

const pairOf =
  (what: string, example: string) =>
  (text: string): readonly [string, string] => {
    const [from, to, more] = text.split('..').map((name) => name.trim());
    if (!from || !to || more !== undefined)
      throw new InvalidArgumentError(
        `It should be two ${what} with two dots between them, such as ${example}.`,
      );
    return [from, to];
  };

function measure(text: string): Measure {
  const [, percent] = /^\s*(\d+(?:\.\d+)?)\s*%\s*$/.exec(text) ?? [];
  if (percent !== undefined) return { share: Number(percent) / 100 };
  const mm = writtenLength(text)?.value;
  if (mm === undefined || mm < 0)
    throw new InvalidArgumentError('It should be a length or a share, such as 120, 5in or 40%.');
  return { mm };
}

function place(text: string): Place {
  const at = text.lastIndexOf('@');
  if (at < 1)
    throw new InvalidArgumentError('It should be an edge and a place on it, such as side@60 or side@50%.');
  return { edge: text.slice(0, at).trim(), at: measure(text.slice(at + 1)) };
}

function notchMove(text: string): readonly [string, Place] {
  const at = text.indexOf('=');
  if (at < 1) throw new InvalidArgumentError('It should be a notch and its new place, such as bust=side@80.');
  return [text.slice(0, at).trim(), place(text.slice(at + 1))];
}

function partner(text: string): readonly [string, string] {
  const at = text.lastIndexOf('#');
  if (at < 1 || at === text.length - 1)
    throw new InvalidArgumentError('It should be a file and an edge of it, such as bodice.svg#under bust.');
  return [text.slice(0, at), text.slice(at + 1).trim()];
}

function cup(text: string): string {
  const letter = text.trim().toUpperCase();
  if (cupDifference(letter) === undefined)
    throw new InvalidArgumentError(`Cups are ${cupLetters.join(', ')}.`);
  return letter;
}

function shortText(text: string): string {
  if (text.trim() === '' || text.length > 40) throw new InvalidArgumentError('It should be 1 to 40 letters.');
  return text.trim();
}
