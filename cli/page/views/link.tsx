import { useState } from 'preact/hooks';
import { linkTo } from '../link.ts';
import { workOf } from '../state.ts';
import { isOwnCode } from './code/written-code.ts';
import type { ViewProps } from './view.ts';

/** A link that opens this view with these choices, and with her measurements only if she asks for that. */
export function Link({ state, send }: ViewProps) {
  const { linksBody, view } = state;
  const [copied, copy] = useState<string>();
  const [address = ''] = location.href.split('#');
  const link = `${address}#${linkTo(view, workOf(state), linksBody)}`;
  return (
    <details class="files">
      <summary>A link to this</summary>
      <p class="row">
        <label for="link" class="unseen">
          The link
        </label>
        <input
          id="link"
          type="text"
          readOnly
          value={link}
          onFocus={({ currentTarget }) => currentTarget.select()}
        />
        <button
          type="button"
          onClick={() =>
            navigator.clipboard.writeText(link).then(
              () => copy(link),
              () => document.getElementById('link')?.focus(),
            )
          }
        >
          {copied === link ? 'Copied' : 'Copy'}
        </button>
      </p>
      {isOwnCode(state.own.code) && (
        <p class="said warning">
          <strong>Look again:</strong> the code that you changed is not in the link: whoever opens it has the
          garment as the program draws it. Save the draft as a file under <a href="#code">Change the code</a>,
          and send that file along; it is opened there.
        </p>
      )}
      <label class="tick">
        <input
          type="checkbox"
          checked={linksBody}
          onChange={({ currentTarget }) => send({ does: 'link body', linksBody: currentTarget.checked })}
        />{' '}
        Her measurements too. Whoever has the link can read them.
      </label>
    </details>
  );
}
