import type { FittingChange } from '../../../../drafts/index.ts';
import type { Finding, WornShown } from '../../requests/wear-messages.ts';

interface FindingListProps {
  readonly worn: WornShown;
  /** What has been taken over, by its words. */
  readonly taken: readonly string[];
  readonly takeOver: (words: readonly string[], changes: readonly FittingChange[]) => void;
}

/** What is not as it should be, each to be taken over into her fitting by one press. */
export function FindingList({ worn: { findings, sure }, taken, takeOver }: FindingListProps) {
  const left = findings.filter((each) => each.sure && each.alter && !taken.includes(each.words));
  return (
    <section aria-label="What a fitter would say">
      <h2>What a fitter would say</h2>
      {findings.length === 0 && <p>Nothing is outside its band: nothing to alter.</p>}
      <ul class="findings">
        {findings.map((finding) => (
          <li key={finding.words}>
            <Said finding={finding} />
            {finding.alter && (
              <TakeOver
                words={finding.alter.words}
                done={taken.includes(finding.words)}
                take={() => finding.alter && takeOver([finding.words], [finding.alter.change])}
              />
            )}
          </li>
        ))}
      </ul>
      {sure.length > 1 && (
        <p>
          <button
            type="button"
            disabled={left.length === 0}
            onClick={() =>
              takeOver(
                left.map(({ words }) => words),
                left.flatMap(({ alter }) => alter?.change ?? []),
              )
            }
          >
            Take over all that is sure
          </button>
        </p>
      )}
    </section>
  );
}

const Said = ({ finding: { words, sure } }: { finding: Finding }) => (
  <p class={sure ? 'said warning' : 'said note'}>
    <strong>{sure ? 'Off' : 'Perhaps'}:</strong> {words}.
  </p>
);

const TakeOver = ({ words, done, take }: { words: string; done: boolean; take: () => void }) => (
  <p>
    <button type="button" disabled={done} onClick={take}>
      {capital(words)}
    </button>{' '}
    {done ? 'taken into her fitting' : ''}
  </p>
);

const capital = (words: string): string => `${words.slice(0, 1).toUpperCase()}${words.slice(1)}`;
