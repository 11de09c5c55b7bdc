import type { TakeAction, Taking } from './own.ts';

const papers = [
  ['a4', 'A4'],
  ['letter', 'Letter'],
  ['a3', 'A3'],
  ['a1', 'A1'],
  ['a0', 'A0'],
  ['roll', 'a roll'],
] as const;

/** Which paper the pattern is printed on. */
export const PaperChoice = ({
  own: { paper, roll },
  act,
  units,
}: {
  own: Taking;
  act: (what: TakeAction) => void;
  units: 'mm' | 'in';
}) => (
  <p class="finder">
    <label for="paper">Paper</label>
    <select
      id="paper"
      value={paper}
      onChange={({ currentTarget }) => act({ does: 'paper', paper: currentTarget.value })}
    >
      {papers.map(([name, title]) => (
        <option key={name} value={name}>
          {title}
        </option>
      ))}
    </select>
    {paper === 'roll' && (
      <>
        <label for="roll">{units === 'in' ? 'wide (36in, or in mm)' : 'wide, in mm'}</label>
        <input
          id="roll"
          type="text"
          autocomplete="off"
          maxLength={20}
          value={roll}
          onInput={({ currentTarget }) => act({ does: 'roll', text: currentTarget.value })}
        />
      </>
    )}
  </p>
);
