import * as z from 'zod';
import { once } from '../once.js';
import { serviceSpaces } from './access.js';
import { field, map } from './field.js';
import { limits } from './limits.js';
import { piping } from './piping.js';
import { pump } from './pump.js';
import { review } from './review.js';
import { room } from './room.js';
import { material, service } from './service.js';
import { assumed } from './structure.js';

/** The whole input file. */
export const fileSchema = once(() =>
  map({
    format: field(z.literal('pipeborne/1'), 'Name and number of the format', 'pipeborne/1'),
    review: field(review(), 'What stands in the title block', {
      project: 'Larkfield pool',
      status: 'for review',
      date: '2026-09-14',
      units: 'us',
    }),
    service: field(service(), 'What flows, how warm and at which pressure', {
      name: 'heating hot water',
      fluid: 'water',
      temperatures: { running: '180 degF' },
      pressures: { working: '60 psi', design: '125 psi' },
    }),
    materials: field(z.record(z.string().trim().min(1), material()), "Materials of the user's own, by name", {
      'special iron': {
        modulus: '14.5 Mpsi',
        poisson: 0.26,
        density: '450 lb/ft3',
        expansion: '6.0e-6 1/degF',
      },
    }).optional(),
    pump: field(pump(), 'The pump', { mark: 'HWP-1', build: 'split-coupled', mount: 'hung' }),
    piping: field(piping(), 'The piping and its lines', {
      size: '6 in',
      schedule: 'STD',
      material: 'carbon steel',
    }),
    assumed: field(assumed(), 'What one person takes for stiffness and friction that nothing else says', {
      by: 'R. Okafor',
      structure: '100 kip/in',
      friction: 0.3,
    }).optional(),
    room: field(room(), 'The room', { floor: '0 ft', ceiling: '13 ft' }).optional(),
    'service-spaces': field(
      serviceSpaces(),
      "Spaces to be kept free, with the manufacturer's or the owner's numbers",
      [
        {
          purpose: 'coupling and seal',
          owner: 'maker',
          source: 'manual 44-7, page 12',
          depth: '24 in',
          width: '20 in',
        },
      ],
    ).optional(),
    limits: field(limits(), 'What the results are held against', {
      'nozzle-loads': { basis: 'maker' },
    }).optional(),
  }).meta({
    title: 'Pipeborne installation, format 1',
    description: 'A pipe-mounted vertical in-line pump, its piping, supports, room and limits',
  }),
);

/** The file as the schema gives it: SI numbers, unit vectors, labels of the catalogue. */
export type FileContent = z.output<ReturnType<typeof fileSchema>>;
