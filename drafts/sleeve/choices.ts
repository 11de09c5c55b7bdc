import type { DraftingTable } from '../../engine/pattern/drafting-table.ts';
import type { Choice, StylingOf } from '../../engine/pattern/styling.ts';
import { sleeveHemAllowance } from '../allowances.ts';

const sleeve = {
  kind: 'word',
  name: 'sleeve',
  default: 'puff',
  words: ['puff', 'long puff', 'plain', 'none'],
  help: 'puff sleeves, puff sleeves to the elbow, plain ones set in with a little ease, or none',
} as const satisfies Choice;

/** What every sleeve leaves to taste. */
const everySleeveChoices = [
  {
    kind: 'number or auto',
    name: 'upperArmEase',
    unit: 'mm',
    default: 'auto',
    min: 20,
    max: 120,
    help: 'room around the upper arm before the sleeve is made full; by itself 50 mm, and less where the crown of a plain cap could not span it',
  },
  {
    kind: 'number or auto',
    name: 'sleeveLength',
    unit: 'mm',
    default: 'auto',
    min: 40,
    max: 400,
    help: 'length of the sleeve seam from underarm to hem',
  },
  sleeveHemAllowance,
] as const satisfies readonly Choice[];

/** What a plain sleeve leaves to taste beside that. */
const plainChoices = [
  {
    kind: 'word',
    name: 'sleeveTo',
    default: 'short',
    words: ['short', 'elbow', 'wrist'],
    help: 'how far down the arm a plain sleeve goes',
  },
  {
    kind: 'number',
    name: 'capEase',
    unit: 'mm',
    default: 38.1,
    min: 10,
    max: 50,
    help: 'how much longer a plain cap is than the armhole between its notches, to be eased in',
  },
] as const satisfies readonly Choice[];

/** What a puff sleeve leaves to taste beside that. */
const puffChoices = [
  {
    kind: 'number',
    name: 'sleeveFullness',
    unit: 'ratio',
    default: 1.7,
    min: 1.2,
    max: 2.5,
    help: 'cap gathered into the armhole between the notches, for each mm of armhole',
  },
  {
    kind: 'number',
    name: 'puffHeight',
    unit: 'mm',
    default: 40,
    min: 10,
    max: 80,
    help: 'how much higher than a plain cap the puffed cap stands',
  },
  {
    kind: 'number or auto',
    name: 'hemElastic',
    unit: 'mm',
    default: 'auto',
    min: 100,
    max: 700,
    help: 'finished girth of the elastic in the sleeve hem',
  },
  {
    kind: 'number',
    name: 'elasticWidth',
    unit: 'mm',
    default: 10,
    min: 5,
    max: 25,
    help: 'width of the elastic in the sleeve hem',
  },
  {
    kind: 'word',
    name: 'sleeveLining',
    default: 'none',
    words: ['none', 'self'],
    help: 'a puff in one layer, or cut double with its hem on a fold, so that it lines itself',
  },
] as const satisfies readonly Choice[];

/** What the plain sleeve leaves to taste. */
export const plainSleeveChoices = [...everySleeveChoices, ...plainChoices] as const;

/** What the sleeves of a dress leave to taste. */
export const sleeveChoices = [sleeve, ...everySleeveChoices, ...plainChoices, ...puffChoices] as const;

/** What a plain sleeve is drawn on: the table of any garment that has these choices. */
export type PlainSleeveTable = DraftingTable<typeof plainSleeveChoices>;

/** The same for a puff sleeve. */
export type PuffSleeveTable = DraftingTable<
  readonly [typeof sleeve, ...typeof everySleeveChoices, ...typeof puffChoices]
>;

/** What any sleeve is drawn on. */
export type SleeveTable = DraftingTable<typeof everySleeveChoices>;

export type PuffStyling = StylingOf<readonly [...typeof everySleeveChoices, ...typeof puffChoices]>;
