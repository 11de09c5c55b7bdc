import { InvalidArgumentError, Option } from 'commander';
import { cupDifference } from '../../engine/body/cup.ts';
import { cupLetters } from '../../engine/body/cup-letters.ts';
import { paperWords } from '../../engine/render/tiles/papers.ts';
import type { LengthOrShare, PlaceOnEdge } from '../../engine/shaping/alteration.ts';
import type { Unit } from '../../engine/text/units.ts';
import { writtenLength } from '../../engine/text/written-length.ts';
import { decimalIn } from '../input/number-of.ts';
import { USUAL } from './alter-steps.ts';

/** What `bodkin alter` was told, but for the alterations themselves (`stepsOf`). */
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

/** What is done to the piece: one alteration, or several with `thenOption` between them. */
export const alteringOptions = (): readonly Option[] => [
  new Option('--along <edges>', 'the two edges that slash lines run between: top..hem').argParser(
    pairOf('edges', 'top..hem'),
  ),
  new Option('--between <notches>', 'slash only from this notch to that: gather start..gather end').argParser(
    pairOf('notches', 'gather start..gather end'),
  ),
  new Option('--lines <count>', 'how many slash lines').argParser(between(1, 60)).default(USUAL.lines),
  new Option('--hinge <edge>', 'keep the strips joined at this edge, and open the other one'),
  new Option('--spread <length>', 'slash and spread by so much in all: 40 (mm), or 1 1/2 in').argParser(
    lengthBetween(-500, 3000),
  ),
  new Option('--gather <ratio>', 'spread until the first slashed edge is so many times its seam').argParser(
    between(1, 6),
  ),
  new Option('--cup-from <letter>', 'spread from the cup it was made for ...').argParser(cup),
  new Option(
    '--cup-to <letter>',
    '... to this cup: half the difference in girth, for half a front',
  ).argParser(cup),
  new Option('--whole', 'the piece goes right across both sides: the whole difference in girth'),
  new Option(
    '--pivot-dart <edge@place>',
    'turn the dart to this place: side@60 (mm), side@2 3/8in or side@50%',
  ).argParser(place),
  new Option('--dart <edge>', 'a leg of the dart meant, where there are several'),
  new Option('--share <share>', 'how much of the dart to turn')
    .argParser(between(0.01, 1))
    .default(USUAL.share),
  new Option('--short <length>', 'draw the point of the dart so far short of the pin').argParser(
    lengthBetween(0, 100),
  ),
  new Option('--lengthen <length>', 'cut across and let down by so much').argParser(lengthBetween(0.1, 2000)),
  new Option('--shorten <length>', 'cut across and take up by so much').argParser(lengthBetween(0.1, 2000)),
  new Option('--at <level>', 'where to cut across, below the top: 120 (mm), 5in or 40%').argParser(measure),
  new Option('--move-notch <notch=edge@place>', 'set a notch elsewhere: bust=side@80').argParser(notchMove),
  new Option('--mirror <edge>', 'draw the other half, mirrored in this edge'),
];

/** Parts one alteration from the next. */
export const thenOption = (): Option =>
  new Option(
    '--then',
    'then do another alteration to what came out: --spread 60 --along a..b --then --mirror front',
  );

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

const between =
  (least: number, most: number) =>
  (text: string): number => {
    const value = decimalIn(text);
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

function measure(text: string): LengthOrShare {
  const [, percent] = /^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(text) ?? [];
  if (percent !== undefined) return { share: decimalIn(percent) / 100 };
  const mm = writtenLength(text)?.value;
  if (mm === undefined || mm < 0)
    throw new InvalidArgumentError('It should be a length or a share, such as 120, 5in or 40%.');
  return { mm };
}

function place(text: string): PlaceOnEdge {
  const at = text.lastIndexOf('@');
  if (at < 1)
    throw new InvalidArgumentError('It should be an edge and a place on it, such as side@60 or side@50%.');
  return { edge: text.slice(0, at).trim(), at: measure(text.slice(at + 1)) };
}

function notchMove(text: string): readonly [string, PlaceOnEdge] {
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
