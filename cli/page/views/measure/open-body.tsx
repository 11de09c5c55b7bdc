import { capital } from '../../../../drafts/index.ts';
import type { FileViewProps } from '../view.ts';
import { invented } from './invented.ts';

/** Measurements from a file, or those of an invented body. */
export function OpenBody({ open, ask, send }: FileViewProps) {
  return (
    <details class="files">
      <summary>Open a file, or try an invented body</summary>
      <p>
        <label>
          Measurements from a file (YAML or JSON; you may also drop it on the page){' '}
          <input
            type="file"
            accept=".yaml,.yml,.json"
            onChange={({ currentTarget }) => {
              const [file] = currentTarget.files ?? [];
              if (file) void open(file);
              currentTarget.value = '';
            }}
          />
        </label>
      </p>
      <p>Nobody in particular: eight invented bodies of a small theatre’s costume workshop.</p>
      <ul class="row">
        {invented.map((name) => (
          <li key={name}>
            <button
              type="button"
              onClick={async () => {
                const file = `${name.replaceAll(' ', '-')}.yaml`;
                try {
                  const found = await fetch(`bodies/${file}`);
                  if (!found.ok) throw new Error(found.statusText);
                  ask({ kind: 'open', file, text: await found.text() });
                } catch {
                  send({ does: 'note', notice: `${file} could not be loaded.` });
                }
              }}
            >
              {capital(name)}
            </button>
          </li>
        ))}
      </ul>
    </details>
  );
}
