import type { TaughtDimension } from './dimension.ts';
import { Label, type LabelRoom } from './label.tsx';

/** A length on the drawing: a line with a bar at each end, or the line itself that is so long; or an angle. */
export function Measured({
  dimension,
  mm,
  labelRoom,
  middle,
  amount,
}: {
  dimension: TaughtDimension;
  mm: number;
  labelRoom: LabelRoom;
  /** Beyond it words stand before a line, where there is room for them. */
  middle: number;
  amount: string;
}) {
  if (dimension.kind === 'line') return <path class="measured" d={dimension.d} />;
  if (dimension.kind === 'angle') {
    const { d, middleOf } = sector(dimension);
    return (
      <g class="measured">
        <path d={d} />
        <Label
          x={middleOf.x + 6 * mm * (middleOf.x > middle ? -1 : 1)}
          y={middleOf.y}
          ends={middleOf.x > middle}
          room={labelRoom}
          text={amount}
          bold
        />
      </g>
    );
  }
  const { from, to } = dimension;
  const x = (from.x + to.x) / 2;
  const along = Math.atan2(to.y - from.y, to.x - from.x);
  // Under what lies level, for the names of points stand over them.
  const lies = Math.abs(Math.sin(along)) < 0.5;
  const [across, reach] = [along + Math.PI / 2, 6 * mm];
  const bar = ({ x, y }: { readonly x: number; readonly y: number }): string =>
    `M${x + reach * Math.cos(across)} ${y + reach * Math.sin(across)}L${x - reach * Math.cos(across)} ${y - reach * Math.sin(across)}`;
  return (
    <g class="measured">
      <path d={`M${from.x} ${from.y}L${to.x} ${to.y}${bar(from)}${bar(to)}`} />
      <Label
        x={x + 8 * mm * (x > middle ? -1 : 1)}
        y={(from.y + to.y) / 2 + (lies ? 1.3 * labelRoom.letter : -4 * mm)}
        ends={x > middle}
        room={labelRoom}
        text={amount}
        bold
      />
    </g>
  );
}

/** An angle's two ways, and an arc between them halfway along the shorter. */
function sector({ at, from, to }: Extract<TaughtDimension, { kind: 'angle' }>) {
  const [one, other] = [from, to].map(({ x, y }) => ({
    along: Math.atan2(y - at.y, x - at.x),
    far: Math.hypot(x - at.x, y - at.y),
  })) as [Way, Way];
  const radius = Math.min(one.far, other.far) / 2;
  const turn = Math.atan2(Math.sin(other.along - one.along), Math.cos(other.along - one.along));
  const onArc = (along: number) => ({
    x: at.x + radius * Math.cos(along),
    y: at.y + radius * Math.sin(along),
  });
  const [begins, ends] = [onArc(one.along), onArc(other.along)];
  return {
    d: `M${from.x} ${from.y}L${at.x} ${at.y}L${to.x} ${to.y}M${begins.x} ${begins.y}A${radius} ${radius} 0 0 ${turn > 0 ? 1 : 0} ${ends.x} ${ends.y}`,
    middleOf: onArc(one.along + turn / 2),
  };
}

/** A way from the place of an angle: where it heads (radians) and how far it goes (mm). */
interface Way {
  readonly along: number;
  readonly far: number;
}
