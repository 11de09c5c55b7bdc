interface DrawingNamesProps {
  readonly names: readonly string[];
  readonly on: string;
  /** Those on which something has moved. */
  readonly moved?: ReadonlySet<string>;
  readonly choose: (on: string) => void;
}

/** Which drawing is shown, where a garment has several. */
export const DrawingNames = ({ names, on, moved, choose }: DrawingNamesProps) => (
  <p class="row drawing-names">
    {names.map((name) => (
      <button key={name} type="button" aria-pressed={name === on} onClick={() => choose(name)}>
        {name}
        {moved?.has(name) ? ' (moved)' : ''}
      </button>
    ))}
  </p>
);
