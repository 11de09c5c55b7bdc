import type { ScreenPiece } from '../../../../drafts/index.ts';
import type { MadeGarment } from '../../messages.ts';
import { before } from '../drawing/drawing.tsx';
import { DrawnPiece, type Lit } from '../drawing/drawn-piece.tsx';
import { Pane } from '../drawing/pane.tsx';
import { pieceWords } from '../drawing/piece-words.ts';
import type { ViewProps } from '../view.ts';
import { headingAt, walkedLine } from './edge-path.ts';
import { isTurnedOver, laidAlong, type SewnEdge, walkedTo } from './walk.ts';

/** White round a piece, and room for a partner beside it, in shares of its size. */
const [margin, room] = [0.06, 0.35];

interface AloneProps extends ViewProps {
  readonly piece: ScreenPiece;
  readonly pieces: readonly ScreenPiece[];
  readonly sewn: SewnEdge | undefined;
  readonly lit: Lit;
  readonly onTouch: (piece: string, edge: string) => void;
  readonly made: MadeGarment;
}

/** One piece large, and while a seam of it is walked the partner that rolls along it. */
export function Alone({ state, send, piece, pieces, sewn, lit, onTouch, made }: AloneProps) {
  const { alone, walked } = state.own.pieces;
  const held = before(state.earlier, piece) ?? piece;
  const share = walked === undefined ? margin : room;
  const around = share * Math.max(held.width, held.height);
  const box = {
    x: held.left - around,
    y: held.top - around,
    width: held.width + 2 * around,
    height: held.height + 2 * around,
  };
  const letters = Math.max(box.width, box.height) / 55;
  return (
    <Pane
      look={alone}
      onLook={(look) => send({ does: 'within', view: 'pieces', what: { does: 'look at piece', look } })}
      box={box}
      holds="pieces"
      says={`The ${piece.name}, for ${made.body}, alone: ${piece.cut}.`}
      wheel
    >
      <DrawnPiece
        piece={piece}
        says={pieceWords(piece, made)}
        earlier={before(state.earlier, piece)}
        lit={lit}
        letters={letters}
        onTouch={onTouch}
      />
      {walked !== undefined && sewn && (
        <Rolling sewn={sewn} share={walked} pieces={pieces} lit={lit} letters={letters} made={made} />
      )}
    </Pane>
  );
}

interface RollingProps {
  readonly sewn: SewnEdge;
  readonly share: number;
  readonly pieces: readonly ScreenPiece[];
  readonly lit: Lit;
  readonly letters: number;
  readonly made: MadeGarment;
}

/** The partner at the place it has been walked to, and the stretch that lies behind it. */
function Rolling({ sewn, share, pieces, lit, letters, made }: RollingProps) {
  const at = walkedTo(sewn, share);
  const begin = walkedTo(sewn, 0);
  const partner = pieces.find(({ name }) => name === at?.partner.piece);
  const here = at && headingAt(pieces, at.own);
  const there = at && headingAt(pieces, at.partner);
  if (!at || !begin || !partner || !here || !there) return null;
  const move = laidAlong(here, there, isTurnedOver(at.own, at.partner));
  const drawnUp = sewn.side === 'a' ? 1 / sewn.seam.gatherRatio : sewn.seam.gatherRatio;
  return (
    <>
      <g class="rolling">
        <DrawnPiece
          piece={partner}
          says={pieceWords(partner, made)}
          lit={lit}
          letters={letters}
          transform={`matrix(${move.join(' ')})`}
        />
      </g>
      <path class="walked" d={walkedLine(pieces, at.own, begin.own.at, drawnUp)} />
      <circle class="met" cx={here.x} cy={here.y} r={letters / 3} />
    </>
  );
}
