import { useMemo } from 'preact/hooks';
import type { ScreenPiece } from '../../../../drafts/index.ts';
import type { PageIssue } from '../../page-issue.ts';
import { garmentNow, isUntouched, type PageState } from '../../state.ts';
import { AllSaid } from '../said.tsx';
import { ToMeasure } from '../to-measure.tsx';
import type { ViewProps } from '../view.ts';
import { arranged } from './arranged.ts';
import { DrawnPiece, type Lit } from './drawn-piece.tsx';
import { Pane } from './pane.tsx';
import { pieceWords, sheetWords } from './piece-words.ts';

/** So many things that stand in the way are told over the drawing. */
const most = 5;

/** About how high the room for a drawing is, in pixels: letters are sized by it. */
const [roomy, narrow] = [900, 400];

interface DrawingProps extends ViewProps {
  /** Width to height of the room it has. */
  readonly aspect: number;
  readonly lit?: Lit;
  readonly onTouch?: (piece: string, edge: string) => void;
  readonly wheel?: boolean;
}

/**
 * All pieces on one paper. Where the newest draft could not be drawn the last stays, under what stands in the way; while
 * something is changed, what it was before is seen in grey under it.
 */
export function Drawing({ state, send, aspect, lit, onTouch, wheel }: DrawingProps) {
  const { made, earlier } = state;
  const pieces = made?.parts.lines;
  // While something is changed all stays where it stood, so that only what is changed is seen to move.
  const placed = earlier ?? pieces;
  const paper = useMemo(() => arranged(placed ?? [], aspect), [placed, aspect]);
  if (!made || !pieces) return <NothingDrawn state={state} send={send} />;
  const seen = state.wide ? roomy : narrow;
  const scale = Math.max(paper.width / (seen * aspect), paper.height / seen);
  return (
    <div class="drawing">
      <Hindered state={state} send={send} />
      <p class="on-paper">Not to scale: what is to be cut is printed from the files under Take.</p>
      <Pane
        look={state.own.pieces.sheet}
        onLook={(look) => send({ does: 'within', view: 'pieces', what: { does: 'look at sheet', look } })}
        box={{ x: 0, y: 0, width: paper.width, height: paper.height }}
        holds="pieces"
        says={sheetWords(made, pieces.length)}
        wheel={wheel ?? false}
      >
        {pieces.map((piece) => (
          <DrawnPiece
            key={piece.name}
            piece={piece}
            says={pieceWords(piece, made)}
            earlier={before(earlier, piece)}
            transform={`translate(${paper.moves.get(piece.name)?.join(' ') ?? '0 0'})`}
            letters={17 * scale}
            {...(lit ? { lit } : {})}
            {...(onTouch ? { onTouch } : {})}
          />
        ))}
      </Pane>
    </div>
  );
}

/** The piece as it was before, where it was another. */
export const before = (
  earlier: readonly ScreenPiece[] | undefined,
  { name }: ScreenPiece,
): ScreenPiece | undefined => earlier?.find((piece) => piece.name === name);

export function NothingDrawn({ state, send }: ViewProps) {
  if (isUntouched(state))
    return (
      <>
        <p class="empty">
          The pieces are drawn here as soon as bust, waist and hip girth and the back neck point to waist are
          known.
        </p>
        <ToMeasure send={send} />
      </>
    );
  const errors = hindrances(state);
  return (
    <>
      <p class="empty">Nothing could be drawn yet.{errors.length > 0 ? ' What stands in the way:' : ''}</p>
      <AllSaid issues={errors.slice(0, most)} hers={{ state, send }} />
    </>
  );
}

/** What stands in the way of the next drawing. */
export function Hindered({ state, send }: ViewProps) {
  if (!state.answer || state.answer.made) return null;
  const errors = hindrances(state);
  return (
    <div class="hinders">
      <p>
        This is the last that could be drawn.{errors.length > 0 ? ' What stands in the way of the next:' : ''}
      </p>
      <AllSaid issues={errors.slice(0, most)} hers={{ state, send }} />
    </div>
  );
}

/** What stands in the way and is said nowhere else in sight: beside the choices, what is said of one stands at that. */
function hindrances(state: PageState): readonly PageIssue[] {
  const errors = state.answer?.issues.filter(({ severity }) => severity === 'error') ?? [];
  if (state.view !== 'choose') return errors;
  const choices = new Set(garmentNow(state)?.choices.map(({ name }) => name));
  return errors.filter(({ path }) => !choices.has(path));
}
