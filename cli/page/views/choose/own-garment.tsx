import { capital } from '../../../../drafts/index.ts';
import { garmentNow } from '../../state.ts';
import { isOwnCode } from '../code/written-code.ts';
import type { ViewProps } from '../view.ts';

/** The garment that her own code draws, where there is any that may be run. */
export function OwnGarment({ state, send }: ViewProps) {
  const { byCode, own, garment } = state;
  const { of, strange, drawn } = own.code;
  if (!of || strange || !isOwnCode(own.code)) return null;
  const name = byCode ? garment : (drawn?.name ?? of.name);
  const title = (byCode ? garmentNow(state)?.title : drawn?.title) ?? '';
  return (
    <label>
      <input
        type="radio"
        name="garment"
        checked={byCode}
        onChange={() => send({ does: 'draw by code', garment: name })}
      />{' '}
      <strong>{capital(name)}, by the code as you changed it</strong> <span class="quiet">{title}</span>
    </label>
  );
}
