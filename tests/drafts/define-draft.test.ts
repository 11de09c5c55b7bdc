import { describe, expect, it } from 'vitest';
import { defineDraft } from '../../drafts/define-draft.ts';

const draw = () => ({ ok: false as const, issues: [] });
const depth = {
  kind: 'number',
  name: 'depth',
  unit: 'mm',
  default: 30,
  min: 10,
  max: 90,
  help: 'how deep',
} as const;
const band = { name: 'band', title: 'A band', shapedBy: ['waistGirth'], choices: [depth], draw } as const;

describe('a draft of one’s own', () => {
  it('is taken as it is where nothing is wrong with it', () => {
    expect(defineDraft(band)).toBe(band);
  });

  it.each([
    ['a name nobody can type', () => defineDraft({ ...band, name: 'My Band' }), /needs a name of small/],
    [
      'nothing that draws it',
      () => defineDraft({ ...band, draw: undefined as never }),
      /“band” lacks draw\. Write draw: \(body/,
    ],
    [
      'a measurement that is no list',
      () => defineDraft({ ...band, shapedBy: 'waistGirth' as never }),
      /has a text for “shapedBy”\. Write shapedBy: a list/,
    ],
    [
      'a choice that is none',
      () => defineDraft({ ...band, choices: [30 as never] }),
      /has something in “choices” that is none of them/,
    ],
    ['a choice declared twice', () => defineDraft({ ...band, choices: [depth, depth] }), /“depth” twice/],
    [
      'a default out of range',
      () => defineDraft({ ...band, choices: [{ ...depth, default: 5 }] }),
      /a default that it does not allow/,
    ],
    [
      'a measurement there is not',
      () => defineDraft({ ...band, shapedBy: ['wrist' as 'waistGirth'] }),
      /“wrist”, which is no measurement/,
    ],
  ])('is refused at once for %s', (_, define, message) => {
    expect(define).toThrow(message);
  });
});
