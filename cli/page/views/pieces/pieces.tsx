import type { WrongPiece } from '../../messages.ts';
import { Drawing, Hindered, NothingDrawn } from '../drawing/drawing.tsx';
import { type Lit, lineKey } from '../drawing/drawn-piece.tsx';
import { wrongWith } from '../drawing/piece-words.ts';
import type { ViewProps } from '../view.ts';
import { Alone } from './alone.tsx';
import { EdgeList } from './edge-list.tsx';
import { type Looking, layers } from './own.ts';
import { type SewnEdge, seamsAt } from './walk.ts';
import { WalkBar } from './walk-bar.tsx';

/** All pieces on one paper, or one alone and large: its edges and what they are sewn to, and what there is to cut. */
export function Pieces({ state, send }: ViewProps) {
  const { made } = state;
  const { piece: shown, hidden, touched } = state.own.pieces;
  const look = (what: Looking): void => send({ does: 'within', view: 'pieces', what });
  const pieces = made?.parts.lines;
  if (!made || !pieces)
    return (
      <>
        <h1 tabIndex={-1}>Pieces</h1>
        <NothingDrawn state={state} send={send} />
      </>
    );
  const piece = pieces.find(({ name }) => name === shown);
  const seams = touched ? seamsAt(made.parts.seams ?? [], touched.piece, touched.edge) : [];
  const sewn = seams[touched?.seam ?? 0] ?? seams[0];
  const onTouch = (on: string, edge: string): void =>
    look({ does: 'touch', touched: { piece: on, edge, seam: 0 } });
  const lit = litBy(touched, sewn);
  return (
    <>
      <h1 tabIndex={-1}>Pieces</h1>
      <div class="finder">
        <label for="piece">Show</label>
        <select
          id="piece"
          value={piece?.name ?? ''}
          onChange={({ currentTarget }) =>
            look({ does: 'show piece', piece: currentTarget.value || undefined })
          }
        >
          <option value="">all on one paper</option>
          {pieces.map(({ name, number }) => (
            <option key={name} value={name}>
              {number} {name}
            </option>
          ))}
        </select>
        <fieldset class="layers">
          <legend>Lines shown</legend>
          {layers.map((layer) => (
            <label key={layer}>
              <input
                type="checkbox"
                checked={!hidden.includes(layer)}
                onChange={({ currentTarget }) =>
                  look({ does: 'show layer', layer, shown: currentTarget.checked })
                }
              />{' '}
              {layer}
            </label>
          ))}
        </fieldset>
      </div>
      <div class={['bench', ...hidden.map((layer) => `without-${layer.replace(' ', '-')}`)].join(' ')}>
        <div class="table-top">
          {piece ? (
            <>
              <Hindered state={state} send={send} />
              <Alone
                state={state}
                send={send}
                piece={piece}
                pieces={pieces}
                sewn={sewn}
                lit={lit}
                onTouch={onTouch}
                made={made}
              />
            </>
          ) : (
            <Drawing
              state={state}
              send={send}
              aspect={state.wide ? 1.5 : 0.9}
              lit={lit}
              onTouch={onTouch}
              wheel
            />
          )}
        </div>
        <div class="beside-table">
          {touched && sewn ? (
            <WalkBar state={state} send={send} sewn={sewn} others={seams} />
          ) : (
            <p class="quiet">
              {touched
                ? `${touched.edge} of the ${touched.piece} is sewn to nothing: it is folded, hemmed or faced.`
                : 'Touch an edge: what it is sewn to lights up, and both lengths are told.'}
            </p>
          )}
          <EdgeList pieces={piece ? [piece] : pieces} touched={touched} onTouch={onTouch} />
        </div>
      </div>
      <section aria-label="What to cut">
        <h2>What to cut</h2>
        <ol class="cut">
          {pieces.map(({ number, name, cut }) => (
            <li key={name} value={number}>
              <button type="button" class="plain" onClick={() => look({ does: 'show piece', piece: name })}>
                {name}
              </button>
              : {cut}
              <Wrong wrong={wrongWith(made, name)} />
            </li>
          ))}
        </ol>
      </section>
    </>
  );
}

/** What the checks found of a piece, and which of its shapes are unusual. */
const Wrong = ({ wrong }: { readonly wrong: WrongPiece | undefined }) => (
  <>
    {wrong?.fails.map((says) => (
      <p key={says} class="said error">
        <strong>Not so:</strong> {says}
      </p>
    ))}
    {wrong && wrong.outside.length > 0 && (
      <p class="quiet">Outside their bands: {wrong.outside.map(({ shape }) => shape).join(', ')}.</p>
    )}
  </>
);

/** The edges that are lit: the one that is touched with those beside it in its seam, and their partners. */
function litBy(
  touched: { readonly piece: string; readonly edge: string } | undefined,
  sewn: SewnEdge | undefined,
): Lit {
  const lit = new Map<string, 'touched' | 'partner'>();
  for (const { piece, edge } of sewn?.other.edges ?? []) lit.set(lineKey(piece, edge), 'partner');
  if (touched) lit.set(lineKey(touched.piece, touched.edge), 'touched');
  return lit;
}
