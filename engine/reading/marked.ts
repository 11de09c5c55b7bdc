import type { FoundElement } from './read-markup.ts';

/** What a drawn line is, by the words in its id, class or label, or in those of the groups around it. */
export type Meaning = 'square' | 'notch' | 'grain' | 'guide' | 'outline' | 'cut' | 'other' | undefined;

/** The words that mark a line, and what each makes of it; `other` leaves it out. */
export const meanings: Readonly<Record<string, NonNullable<Meaning>>> = {
  square: 'square',
  notch: 'notch',
  notches: 'notch',
  grain: 'grain',
  grainline: 'grain',
  guide: 'guide',
  level: 'guide',
  outline: 'outline',
  stitch: 'outline',
  stitching: 'outline',
  cut: 'cut',
  cutting: 'cut',
  paper: 'other',
  label: 'other',
  arrow: 'other',
  slash: 'other',
  earlier: 'other',
  bar: 'other',
  drill: 'other',
  cross: 'other',
  buttonhole: 'other',
  casing: 'other',
  gather: 'other',
};

/** The attributes in which drawings are marked: id, class, and whatever ends in “label” or starts with “data-”. */
const isMark = (key: string): boolean =>
  key === 'id' || key === 'class' || key.endsWith('label') || key.startsWith('data-');

/** The words an element is marked with, its own first, then those of the groups around it, in small letters. */
export function marksOf(element: FoundElement): readonly string[] {
  const words: string[] = [];
  for (let at: FoundElement | undefined = element; at?.parent; at = at.parent)
    for (const [key, value] of Object.entries(at.attributes))
      if (isMark(key) && value.length <= 200) words.push(...value.toLowerCase().split(/[^\p{L}]+/u));
  return words;
}

/**
 * What an element is marked as; the nearest mark counts. But a line that only its own name would leave out, such as “gather
 * start”, is a notch in a group of notches.
 */
export function meaningOf(element: FoundElement): Meaning {
  let nearest: Meaning;
  for (let at: FoundElement | undefined = element; at?.parent; at = at.parent) {
    const meaning = ownMeaning(at);
    if (meaning === 'notch' && nearest === 'other') return 'notch';
    nearest ??= meaning;
    if (nearest && nearest !== 'other') return nearest;
  }
  return nearest;
}

function ownMeaning({ attributes }: FoundElement): Meaning {
  for (const key of ['class', 'id', ...Object.keys(attributes)])
    if (isMark(key))
      for (const word of (attributes[key] ?? '')
        .slice(0, 200)
        .toLowerCase()
        .split(/[^\p{L}]+/u)) {
        const meaning = Object.hasOwn(meanings, word) ? meanings[word] : undefined;
        if (meaning) return meaning;
      }
  return undefined;
}

/** Whether an element, or a group around it, is called so: by its id, its label or the piece it belongs to. */
export function isCalled(element: FoundElement, name: string): boolean {
  const wanted = name.trim().toLowerCase();
  for (let at: FoundElement | undefined = element; at?.parent; at = at.parent)
    for (const [key, value] of Object.entries(at.attributes))
      if (
        (key === 'id' || key.endsWith('label') || key === 'data-piece') &&
        value.trim().toLowerCase() === wanted
      )
        return true;
  return false;
}

/** The name a line carries itself: as an edge or a notch, by its label, or by its id. */
export function ownName({ attributes }: FoundElement, kind: 'edge' | 'notch'): string | undefined {
  const label = Object.keys(attributes).find((key) => key.endsWith('label'));
  const name = attributes[`data-${kind}`] ?? (label ? attributes[label] : undefined) ?? attributes.id;
  return name?.trim() ? name.trim().slice(0, 60) : undefined;
}
