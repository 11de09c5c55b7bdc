import {
  type Body,
  type Choice,
  type Draft,
  resolveStyling,
  type ScreenPiece,
  screenPieces,
  solve,
} from '../../../drafts/index.ts';
import { Unusable } from '../../input/unusable.ts';
import type { AskedDraft } from '../asked-draft.ts';
import { draftingOf } from '../own-draft/drafting-of.ts';
import { bodyOrUsual } from './usual-body.ts';

/** What each word that can be chosen looks like, drawn for her. */
export interface PicturesRequest extends AskedDraft {
  readonly kind: 'pictures';
  /** What they are pictures for, so that an answer can be known. */
  readonly of: string;
}

/** The pictures of one choice; told one after the other. */
export interface PicturesAnswer {
  readonly kind: 'pictured';
  readonly of: string;
  readonly choice: string;
  /** By word; none for a word that cannot be drawn. */
  readonly pictures: Readonly<Record<string, ChoicePicture>>;
  /** Whether it is the last. */
  readonly done: boolean;
}

/** Pieces side by side, as stitching lines; mm. */
export interface ChoicePicture {
  readonly width: number;
  readonly height: number;
  readonly lines: readonly { readonly d: string; readonly x: number; readonly y: number }[];
}

/** So many pieces are shown of each. */
const most = 3;

/** White between them, mm. */
const gap = 30;

/** Tells the pictures of each choice, one after the other; of code that cannot be run there are none, which a draft of it says. */
export async function pictured(
  request: PicturesRequest,
  tell: (answer: PicturesAnswer) => void,
): Promise<void> {
  try {
    await draw(request, tell);
  } catch (error) {
    if (!(error instanceof Unusable)) throw error;
    tell({ kind: 'pictured', of: request.of, choice: '', pictures: {}, done: true });
  }
}

async function draw(asking: PicturesRequest, tell: (answer: PicturesAnswer) => void): Promise<void> {
  const { body, choices, of } = asking;
  const { draft, done } = await draftingOf(asking);
  const shown = bodyOrUsual(body);
  const asked = draft.choices.filter((choice) => choice.kind === 'word');
  for (const [i, choice] of asked.entries()) {
    const drawn = await done(
      () =>
        new Map(
          choice.words.map((word) => [
            word,
            drawnWith(draft, shown.body, { ...choices, [choice.name]: word }),
          ]),
        ),
    );
    tell({
      ...{ kind: 'pictured', of, choice: choice.name, done: i === asked.length - 1 },
      pictures: picturesOf(choice, drawn),
    });
  }
}

type Pieces = readonly ScreenPiece[] | undefined;

function drawnWith(draft: Draft, body: Body, choices: Readonly<Record<string, string>>): Pieces {
  const styling = resolveStyling(draft.choices, choices);
  const drawn = styling.ok ? draft.draw(body, styling.value, solve) : styling;
  return drawn.ok ? screenPieces(drawn.value, new Map(), 'slit') : undefined;
}

/** The first pieces that are not the same with every word; of linings and facings the outside tells enough. */
function picturesOf(
  { words }: Extract<Choice, { kind: 'word' }>,
  drawn: ReadonlyMap<string, Pieces>,
): Readonly<Record<string, ChoicePicture>> {
  const outline = (pieces: Pieces, name: string): string | undefined =>
    pieces?.find((piece) => piece.name === name)?.lines.find((line) => line.edge !== undefined) &&
    outlineOf(pieces.find((piece) => piece.name === name));
  const all = [...drawn.values()].filter((pieces) => pieces !== undefined);
  const names = [...new Set(all.flatMap((pieces) => pieces.map(({ name }) => name)))].filter(
    (name) => !/lining|facing/.test(name),
  );
  const unlike = names.filter((name) => new Set(all.map((pieces) => outline(pieces, name))).size > 1);
  if (unlike.length === 0) return {};
  return Object.fromEntries(
    words.flatMap((word) => {
      const pieces = drawn.get(word)?.filter(({ name }) => unlike.includes(name));
      return pieces ? [[word, pictureOf(pieces.slice(0, most))] as const] : [];
    }),
  );
}

const outlineOf = (piece: ScreenPiece | undefined): string =>
  piece?.lines.flatMap(({ edge, d }) => (edge === undefined ? [] : [d])).join('') ?? '';

function pictureOf(pieces: readonly ScreenPiece[]): ChoicePicture {
  let along = 0;
  const lines = pieces.flatMap((piece) => {
    const [x, y] = [along - piece.left, -piece.top];
    along += piece.width + gap;
    return piece.lines
      .filter(({ edge, class: type }) => edge !== undefined || type === 'gather')
      .map(({ d }) => ({ d, x, y }));
  });
  return {
    width: Math.max(1, along - gap),
    height: Math.max(1, ...pieces.map(({ height }) => height)),
    lines,
  };
}
