import { Drawing } from '../drawing.tsx';
import type { ViewProps } from '../view.ts';

/** The sheet, or one piece alone, and what there is to cut. */
export function Pieces({ state, send }: ViewProps) {
  const { made } = state;
  const { piece } = state.own.pieces;
  const files = made?.parts.files ?? [];
  return (
    <>
      <h1 tabIndex={-1}>Pieces</h1>
      {files.length > 0 && (
        <p class="finder">
          <label for="piece">Show</label>
          <select
            id="piece"
            value={piece ?? ''}
            onChange={({ currentTarget }) =>
              send({
                does: 'within',
                view: 'pieces',
                what: { does: 'show piece', piece: currentTarget.value || undefined },
              })
            }
          >
            <option value="">all on one sheet</option>
            {files.map(({ name }) => (
              <option key={name} value={name}>
                {name.replace(/\.svg$/, '').replaceAll('-', ' ')}
              </option>
            ))}
          </select>
        </p>
      )}
      <Drawing state={state} send={send} />
      {made && (
        <section aria-label="What to cut">
          <h2>What to cut</h2>
          <ol class="cut">
            {made.pieces.map(({ number, name, cut }) => (
              <li key={name} value={number}>
                <strong>{name}</strong>: {cut}
              </li>
            ))}
          </ol>
        </section>
      )}
    </>
  );
}
