import type { WornScene } from './scene.ts';
import type { Shown } from './show-worn.ts';

const parts = [
  ['body', 'body'],
  ['arms', 'its arms'],
  ['seams', 'seams'],
  ['grain', 'grain lines'],
] as const;

interface ChoicesProps {
  readonly scene: WornScene;
  readonly shown: Shown;
  readonly change: (shown: Shown) => void;
}

/** What of the scene is seen: colours, the body, lines, pieces. */
export function StageChoices({ scene, shown, change }: ChoicesProps) {
  const map = scene.maps.find(({ name }) => name === shown.map);
  const toggled = (name: string): ReadonlySet<string> => {
    const hidden = new Set(shown.hidden);
    if (!hidden.delete(name)) hidden.add(name);
    return hidden;
  };
  const colour = (name: string | undefined, title: string) => (
    <label>
      <input
        type="radio"
        name="worn-map"
        checked={shown.map === name}
        onChange={() => change({ ...shown, map: name })}
      />
      {title}
    </label>
  );
  return (
    <div class="worn-choices">
      <fieldset>
        <legend>Colours</legend>
        {colour(undefined, 'Pieces, each its own')}
        {scene.maps.map(({ name, title }) => colour(name, title))}
        {map && (
          <ul class="worn-legend" aria-label={map.title}>
            {map.steps.map(({ colour: fill, says }) => (
              <li>
                <span class="worn-swatch" style={{ background: fill }} />
                {says}
              </li>
            ))}
          </ul>
        )}
      </fieldset>
      <fieldset>
        <legend>Shown</legend>
        {parts.map(([name, title]) => (
          <label>
            <input
              type="checkbox"
              checked={shown[name]}
              onChange={() => change({ ...shown, [name]: !shown[name] })}
            />
            {title}
          </label>
        ))}
      </fieldset>
      <fieldset>
        <legend>Pieces</legend>
        {scene.pieces.map(({ name, colour: fill }) => (
          <label>
            <input
              type="checkbox"
              checked={!shown.hidden.has(name)}
              onChange={() => change({ ...shown, hidden: toggled(name) })}
            />
            <span class="worn-swatch" style={{ background: fill }} />
            {name}
          </label>
        ))}
      </fieldset>
    </div>
  );
}
