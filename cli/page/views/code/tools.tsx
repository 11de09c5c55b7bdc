import { joinedFiles } from '../../../own-draft/draft-files.ts';
import type { GarmentChoices } from '../../garment-choices.ts';
import { saveFile } from '../../save-file.ts';
import { useDroppedFiles } from '../use-dropped-files.ts';
import type { Coding } from './coding.ts';
import { openDraft } from './open-draft.ts';
import type { Coded } from './own.ts';
import { beginning } from './sources.ts';
import { filesNow } from './written-code.ts';

interface ToolsProps {
  readonly code: Coded;
  readonly garments: readonly GarmentChoices[];
  readonly tell: (what: Coding) => void;
  readonly run: () => void;
}

/** Whose code it is, which of its files is shown, and what can be done with them. */
export function Tools({ code, garments, tell, run }: ToolsProps) {
  const { of, original, changed, file, shows } = code;
  const isChanged = Object.keys(changed).length > 0;
  const begin = async (name: string): Promise<void> => tell(await beginning(name));
  const open = async (draft: File): Promise<void> => tell(await openDraft(draft));
  useDroppedFiles(([dropped]) => {
    if (!dropped || !/\.[cm]?[jt]s$/i.test(dropped.name)) return false;
    void open(dropped);
    return true;
  });
  return (
    <div class="code-tools">
      <p class="finder">
        <label for="whose">Draft</label>
        <select
          id="whose"
          value={of?.kind === 'garment' ? of.name : (of?.name ?? '')}
          onChange={({ currentTarget }) => void begin(currentTarget.value)}
        >
          {garments.map(({ name, title }) => (
            <option key={name} value={name}>
              {title}
            </option>
          ))}
          {of?.kind === 'own' && <option value={of.name}>{of.name}</option>}
        </select>
        <label for="file">File</label>
        <select
          id="file"
          value={file}
          onChange={({ currentTarget }) => tell({ does: 'show file', file: currentTarget.value })}
        >
          {Object.keys(original).map((name) => (
            <option key={name} value={name}>
              {name}
              {name in changed ? ' (changed)' : ''}
            </option>
          ))}
        </select>
        <button type="button" onClick={run} title="Ctrl+Enter in the editor">
          Run
        </button>
        <button
          type="button"
          aria-pressed={shows === 'difference'}
          onClick={() => tell({ does: 'show', shows: shows === 'difference' ? 'code' : 'difference' })}
        >
          Difference
        </button>
        <button
          type="button"
          disabled={!(file in changed)}
          onClick={() => tell({ does: 'back to the original', file })}
        >
          This file as it was
        </button>
        <button
          type="button"
          disabled={!isChanged}
          onClick={() => tell({ does: 'back to the original', file: undefined })}
        >
          All as it was
        </button>
      </p>
      <details class="files">
        <summary>Open, save, or begin one of your own</summary>
        <p class="row">
          <button
            type="button"
            disabled={file === ''}
            onClick={() => saveFile({ name: savedName(code), text: joinedFiles(filesNow(code)) })}
          >
            Save as a file
          </button>
          <button type="button" onClick={() => void begin('belt')}>
            New draft from the belt of the lesson
          </button>
        </p>
        <p>
          <label for="draft-file">Open a draft from a file</label>{' '}
          <input
            id="draft-file"
            type="file"
            accept=".ts,.js,.mts,.mjs"
            onChange={async ({ currentTarget }) => {
              const [chosen] = currentTarget.files ?? [];
              if (chosen) await open(chosen);
              currentTarget.value = '';
            }}
          />
        </p>
        <p class="quiet">
          What is saved, the command line takes as it is: bodkin draft … --draft {savedName(code)}
        </p>
      </details>
    </div>
  );
}

const savedName = ({ of }: Coded): string => (of?.kind === 'own' ? of.name : `my-${of?.name ?? 'draft'}.ts`);
