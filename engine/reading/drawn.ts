import type { Curve } from '../geometry/curve.ts';
import { type Point, point } from '../geometry/point.ts';
import type { Issue } from '../issue.ts';
import type { IssueCode } from '../issue-codes/issue-codes.ts';
import { ownNames } from '../render/ink.ts';
import { lineTypes } from '../render/line-types.ts';
import type { FoundElement } from './read-markup.ts';
import { readPath } from './read-path.ts';

/** What tells one line of a drawing from another: its class, its piece, and its own name on that piece. */
export interface LineName {
  readonly kind: string;
  readonly piece: string;
  /** The edge, the edge and the notch, the line or the mark; nothing where a piece has only one of the kind. */
  readonly own?: string;
}

/** The own name of a notch: the same one may stand on two edges of a piece. */
export const notchName = (edge: string, notch: string): string => `${edge}/${notch}`;

/** Finds the lines of a drawing by name, in millimetres, and keeps account of what is missing or unreadable. */
export class NamedLines {
  readonly issues: Issue[] = [];
  private readonly named = new Map<string, { readonly name: LineName; readonly elements: FoundElement[] }>();
  private readonly asked = new Set<string>();
  private readonly scale: number;

  constructor(elements: readonly FoundElement[], scale: number) {
    this.scale = scale;
    for (const element of elements) {
      const { class: kind = '', 'data-piece': piece } = element.attributes;
      if (piece === undefined || (element.name !== 'path' && element.name !== 'circle')) continue;
      const own = ownNames.flatMap((name) => element.attributes[`data-${name}`] ?? []).join('/');
      const name = { kind, piece, own };
      const known = this.named.get(keyOf(name));
      if (known) known.elements.push(element);
      else this.named.set(keyOf(name), { name, elements: [element] });
    }
  }

  /** The one line of this name; no curves, and an issue, when it is missing, drawn twice or unreadable. */
  line(name: LineName): readonly Curve[] {
    return this.only(name)?.curves ?? [];
  }

  /** As `line`, but it must be closed. */
  loop(name: LineName): readonly Curve[] {
    const read = this.only(name);
    if (read && !read.closed) this.refuse(name, 'path-open', 'is not closed');
    return read?.curves ?? [];
  }

  /** All strokes of this name, a chain each. */
  strokes(name: LineName): readonly (readonly Curve[])[] {
    const found = this.find(name);
    if (found.length === 0) this.refuse(name, 'path-missing', 'is not drawn');
    return found.flatMap((element) => {
      const read = this.read(name, element);
      return read ? [read.curves] : [];
    });
  }

  /** The middle of the circle of this name. */
  middle(name: LineName): Point {
    const [first] = this.find(name);
    const [x, y] = [Number(first?.attributes.cx), Number(first?.attributes.cy)];
    if (!first) this.refuse(name, 'path-missing', 'is not drawn');
    else if (!Number.isFinite(x) || !Number.isFinite(y))
      this.refuse(name, 'path-unreadable', 'cannot be read: it has no middle');
    else return point(x * this.scale, y * this.scale);
    return point(0, 0);
  }

  /** Speaks up where a line calls its edge another kind than the file does: its style hangs on that. */
  refuseOtherTurn(name: LineName, turn: string): void {
    const other = this.find(name).some(({ attributes }) => (attributes['data-turn'] ?? turn) !== turn);
    if (other) this.refuse(name, 'path-otherwise', 'is drawn as another kind of edge than the file says');
  }

  /** Speaks up about stitching and cutting lines that nobody asked for: the file draws more than it speaks of. */
  refuseUnknown(): void {
    for (const [key, { name }] of this.named)
      if (!this.asked.has(key) && (name.kind === 'stitch' || name.kind === 'cut'))
        this.refuse(name, 'path-unknown', 'is drawn, but the file does not say what it is');
  }

  private only(name: LineName): { readonly curves: readonly Curve[]; readonly closed: boolean } | undefined {
    const [first, second] = this.find(name);
    if (second) this.refuse(name, 'path-twice', 'is drawn twice');
    if (!first) this.refuse(name, 'path-missing', 'is not drawn');
    return first && this.read(name, first);
  }

  private find(name: LineName): readonly FoundElement[] {
    this.asked.add(keyOf(name));
    return this.named.get(keyOf(name))?.elements ?? [];
  }

  private read(name: LineName, { attributes, transformed }: FoundElement) {
    const read = readPath(attributes.d ?? '', this.scale);
    if (read.ok && !transformed) return read;
    if (!read.ok) this.refuse(name, 'path-unreadable', `cannot be read: ${read.reason}`);
    else this.refuse(name, 'path-moved', 'was moved or scaled by a transform; apply it to the path first');
    return undefined;
  }

  private refuse({ kind, piece, own }: LineName, code: IssueCode, what: string): void {
    const says = lineTypes.find((type) => type.class === kind)?.says ?? kind;
    const message = `The ${says}${own ? ` “${own}”` : ''} of ${piece} ${what}.`;
    this.issues.push({ code, severity: 'error', path: own ? `${piece}/${own}` : piece, message });
  }
}

const keyOf = ({ kind, piece, own = '' }: LineName): string => JSON.stringify([kind, piece, own]);
