import { materialNames } from '../../catalog/index.js';
import type { Assumption, Installation, Line, ReviewData } from '../installation.js';
import type { PendingIssue } from '../pending-issue.js';
import type { FileContent } from '../schema/file-schema.js';
import { startContext } from './input-context.js';
import { resolveLetterhead } from './resolve-letterhead.js';
import { resolveLimits, rodEdition } from './resolve-limits.js';
import { type MaterialFinder, materialFinder } from './resolve-materials.js';
import { linePipe } from './resolve-pipe.js';
import { resolvePump } from './resolve-pump.js';
import { resolveRoom } from './resolve-room.js';
import { resolveService } from './resolve-service.js';
import { resolveSpaces } from './resolve-spaces.js';
import { noteStart } from './resolve-start.js';
import { resolveWalk } from './resolve-walk.js';
import { nameCounter, type Walking } from './walking.js';

/** An installation with what was found on the way; with a pending issue of error grade it must not be used. */
export interface Resolved {
  readonly installation: Omit<Installation, 'fingerprint' | 'sourcesUsed'>;
  readonly pendingIssues: readonly PendingIssue[];
}

/**
 * Fills in catalogue values and assumptions, and checks what one field says against another.
 *
 * @param file - content of the file, as the schema gives it [-]
 * @returns the installation, and issues [-]
 */
export function resolveInstallation(file: FileContent): Resolved {
  const { reading, pendingIssues, assumptions } = startContext(file.review.units);
  const materials = materialFinder(reading, file.materials);
  const service = resolveService(reading, file.service);
  const pump = resolvePump(reading, materials, file);
  noteStart(reading, pump);
  const walking: Walking = {
    reading,
    rods: rodEdition(reading, file.limits),
    name: nameCounter(),
    assumed: file.assumed,
    materials: new Set(),
  };
  const lines = resolveLines(walking, materials, file);
  const room = resolveRoom(reading, file.room, file['service-spaces']);
  const spaces = resolveSpaces(reading, file, lines, pump);
  const pipeMaterials = [...walking.materials].filter((name) => name !== '');
  const limits = resolveLimits(reading, file.limits, service, pipeMaterials);
  for (const name of Object.keys(file.materials ?? {})) {
    if (materialNames().includes(name))
      reading.report('input.material-known', ['materials', name], { name }, 'key');
    materials.find(name, ['materials', name]);
  }
  const taken: readonly Assumption[] = assumptions();
  return {
    installation: {
      format: 'pipeborne/1',
      review: resolveReview(file.review),
      service,
      materials: materials.used,
      pump,
      lines,
      room,
      ...spaces,
      limits,
      assumptions: taken,
    },
    pendingIssues,
  };
}

/**
 * The lines of a file of which nothing else has changed, for trials by the thousand.
 *
 * @param file - content of the file, as the schema gives it [-]
 * @returns the lines, or undefined where an error was found on the way [-]
 */
export function resolveLinesAlone(file: FileContent): readonly Line[] | undefined {
  const { reading, pendingIssues } = startContext(file.review.units);
  const walking: Walking = {
    reading,
    rods: rodEdition(reading, file.limits),
    name: nameCounter(),
    assumed: file.assumed,
    materials: new Set(),
  };
  const lines = resolveLines(walking, materialFinder(reading, file.materials), file);
  return pendingIssues.some(({ severity = 'error' }) => severity === 'error') ? undefined : lines;
}

function resolveReview(file: FileContent['review']): ReviewData {
  const { project, location, client, status, date, revisions = [], notes = [], units } = file;
  const preparedBy = file['prepared-by'];
  const engineerOfRecord = file['engineer-of-record'];
  return {
    project,
    ...(location !== undefined && { location }),
    ...(client !== undefined && { client }),
    ...(preparedBy !== undefined && { preparedBy }),
    ...(engineerOfRecord !== undefined && { engineerOfRecord }),
    ...(file.letterhead !== undefined && { letterhead: resolveLetterhead(file.letterhead) }),
    status,
    date,
    revisions,
    notes,
    units,
    ...(file.english !== undefined && { english: file.english }),
  };
}

/** The suction line first, whatever the order of the file, so that parts are counted from there. */
function resolveLines(walking: Walking, materials: MaterialFinder, file: FileContent): readonly Line[] {
  const { reading } = walking;
  return (['suction', 'discharge'] as const).flatMap((from) => {
    const index = file.piping.lines.findIndex((line) => line.from === from);
    const line = file.piping.lines[index];
    if (!line) return [];
    const path = ['piping', 'lines', index] as const;
    const pipe = linePipe({ reading, materials, whole: file.piping, line, linePath: path });
    const port = file.pump[from];
    const { nps } = pipe.section;
    if (nps !== undefined && nps !== port.size) {
      reading.report('input.size-jump', line.size === undefined ? ['piping', 'size'] : [...path, 'size'], {
        line: nps,
        port: port.size,
        from,
      });
    }
    const walk = resolveWalk(walking, line.walk, { path: [...path, 'walk'], travel: port.facing, pipe });
    return [{ name: line.name ?? `${from} line`, from, section: pipe.section, walk }];
  });
}
