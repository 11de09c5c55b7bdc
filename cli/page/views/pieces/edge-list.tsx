import type { ScreenPiece } from '../../../../drafts/index.ts';
import type { TouchedEdge } from './own.ts';

interface EdgeListProps {
  readonly pieces: readonly ScreenPiece[];
  readonly touched: TouchedEdge | undefined;
  readonly onTouch: (piece: string, edge: string) => void;
}

/** The edges as buttons, for whoever touches them by keys or by their names. */
export const EdgeList = ({ pieces, touched, onTouch }: EdgeListProps) => (
  <div class="edges">
    {pieces.map(({ name, lines }) => (
      <details key={name} open={pieces.length === 1}>
        <summary>Edges of the {name}</summary>
        <ul>
          {lines.map(
            ({ edge }) =>
              edge !== undefined && (
                <li key={edge}>
                  <button
                    type="button"
                    class="plain"
                    aria-pressed={touched?.piece === name && touched.edge === edge}
                    onClick={() => onTouch(name, edge)}
                  >
                    {edge}
                  </button>
                </li>
              ),
          )}
        </ul>
      </details>
    ))}
  </div>
);
