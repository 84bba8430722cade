import type { PlanPoint } from '../../geometry/index.js';
import { type ServiceVolume, serviceVolumes, spacesFor } from '../../model/room/service-spaces.js';
import { type AccessSubject, accessOf } from './access-subject.js';
import { boxOf, freeSideOf } from './coupling-space.js';
import { motorWay } from './way-out.js';
import { standingPlace } from './working-space.js';

/**
 * Every space a review speaks of, where it was found or asked for: those of the file, the side of the coupling that is
 * freest, and the best place to stand.
 *
 * @param subject - pump, room and spaces
 * @returns solids by purpose [m]
 */
export function accessVolumes(subject: AccessSubject): readonly ServiceVolume[] {
  const { installation, layout } = subject;
  const access = accessOf(subject);
  const coupling = spacesFor(installation, 'coupling and seal').flatMap((space): readonly ServiceVolume[] => {
    const free = freeSideOf(space, subject, access);
    const solid = free && boxOf(space, access, free.side, space.depth ?? 0);
    return solid === undefined
      ? []
      : [{ purpose: 'coupling and seal', name: 'coupling and seal', solid, source: space.source }];
  });
  const hasWalls = installation.room.objects.some(({ kind }) => kind === 'wall');
  const own = spacesFor(installation, 'working space');
  const standing = (own.length === 0 ? [undefined] : own).flatMap((space): readonly ServiceVolume[] => {
    const place = hasWalls ? standingPlace(subject, space) : undefined;
    return place === undefined
      ? []
      : [
          {
            purpose: 'working space',
            name: 'working space',
            solid: place.box,
            source: space?.source ?? 'local code',
          },
        ];
  });
  return [...serviceVolumes(installation, layout, access.pump), ...coupling, ...standing];
}

/**
 * Corners of the way the motor is taken out by.
 *
 * @param subject - pump and room
 * @returns places in plan; nothing where there is no way, or nothing to tell it from [m]
 */
export function routeOut(subject: AccessSubject): readonly PlanPoint[] | undefined {
  const walls = subject.installation.room.objects.some(({ kind }) => kind === 'wall');
  return walls ? motorWay(subject)?.route.route : undefined;
}
