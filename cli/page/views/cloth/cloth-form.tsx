import { usualFigures } from './her-unit.ts';
import { type ClothAction, type EffortName, efforts, type OnCloth } from './own.ts';

interface ClothFormProps {
  readonly own: OnCloth;
  readonly inches: boolean;
  readonly act: (what: ClothAction) => void;
}

/** How the cloth is, and how long to seek. */
export function ClothForm({ own: { cloth, effort }, inches, act }: ClothFormProps) {
  const unit = inches ? 'in' : 'mm';
  const usual = usualFigures(inches);
  return (
    <section class="fields" aria-label="The cloth">
      <Figure
        id="cloth-width"
        label="Width, selvedge to selvedge"
        unit={unit}
        text={cloth.width}
        usual={usual.width}
        type={(width) => act({ does: 'cloth', cloth: { width } })}
      />
      <fieldset class="field words">
        <legend>Laid</legend>
        {(['folded', 'open'] as const).map((how) => (
          <label key={how}>
            <input
              type="radio"
              name="laid"
              checked={cloth.cloth === how}
              onChange={() => act({ does: 'cloth', cloth: { cloth: how } })}
            />{' '}
            {how === 'folded' ? 'folded lengthwise' : 'open, one layer'}
          </label>
        ))}
        <label class="tick">
          <input
            type="checkbox"
            checked={cloth.nap ?? false}
            onChange={({ currentTarget }) => act({ does: 'cloth', cloth: { nap: currentTarget.checked } })}
          />{' '}
          with a nap or a print: all pieces one way
        </label>
      </fieldset>
      <Figure
        id="cloth-stripe"
        label="Stripes across repeat every"
        unit={unit}
        text={cloth.stripe}
        usual={usual.stripe}
        type={(stripe) => act({ does: 'cloth', cloth: { stripe } })}
      />
      <Figure
        id="cloth-stripe-along"
        label="Stripes along repeat every"
        unit={unit}
        text={cloth.stripeAlong}
        usual={usual.stripeAlong}
        type={(stripeAlong) => act({ does: 'cloth', cloth: { stripeAlong } })}
      />
      <label class="tick">
        <input
          type="checkbox"
          checked={cloth.oneOrder ?? false}
          onChange={({ currentTarget }) => act({ does: 'cloth', cloth: { oneOrder: currentTarget.checked } })}
        />{' '}
        the colours of stripes along follow each other in one order
      </label>
      <Figure
        id="cloth-selvedge"
        label="Free along each selvedge"
        unit={unit}
        text={cloth.selvedge}
        usual={usual.selvedge}
        type={(selvedge) => act({ does: 'cloth', cloth: { selvedge } })}
      />
      <Figure
        id="cloth-gap"
        label="Free between pieces"
        unit={unit}
        text={cloth.gap}
        usual={usual.gap}
        type={(gap) => act({ does: 'cloth', cloth: { gap } })}
      />
      <Figure
        id="cloth-shrink"
        label="Lost in the wash"
        unit="%"
        text={cloth.shrink}
        usual={usual.shrink}
        type={(shrink) => act({ does: 'cloth', cloth: { shrink } })}
      />
      <div class="field">
        <label for="cloth-effort">Seek for</label>
        <select
          id="cloth-effort"
          value={effort}
          onChange={({ currentTarget }) => act({ does: 'effort', effort: currentTarget.value as EffortName })}
        >
          {Object.entries(efforts).map(([name, { title }]) => (
            <option key={name} value={name}>
              {title}
            </option>
          ))}
        </select>
      </div>
    </section>
  );
}

interface FigureProps {
  readonly id: string;
  readonly label: string;
  readonly unit: string;
  readonly text: string;
  readonly usual: string;
  readonly type: (text: string) => void;
}

const Figure = ({ id, label, unit, text, usual, type }: FigureProps) => (
  <div class="field">
    <label for={id}>{label}</label>
    <span class="entry">
      <input
        id={id}
        type="text"
        autocomplete="off"
        maxLength={20}
        value={text}
        placeholder={usual}
        onInput={({ currentTarget }) => type(currentTarget.value)}
      />
      <span class="unit">{unit}</span>
    </span>
  </div>
);
