import type { ViewProps } from '../view.ts';
import { codeIssues } from './own.ts';
import { isOwnCode } from './written-code.ts';

/** Whether the other views are drawn by this code too. */
export function DrawViews({ state: { byCode, own }, send }: ViewProps) {
  const { code } = own;
  if (byCode || !isOwnCode(code) || code.strange) return null;
  const name = codeIssues(code).length === 0 ? code.drawn?.name : undefined;
  return (
    <p class="row">
      <button
        type="button"
        disabled={name === undefined}
        onClick={() => name !== undefined && send({ does: 'draw by code', garment: name })}
      >
        Draw by it in every view
      </button>{' '}
      <span class="quiet">
        Pieces, checks, sizes, cloth, what is worn and what you take are then drawn by this code.
      </span>
    </p>
  );
}
