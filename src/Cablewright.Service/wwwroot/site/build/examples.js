// Jobs to start from, of a workshop that does not exist.

/** @type {{ title: string, build: Build }[]} */
export const examples = [
  {
    title: "One 500 W amplifier in the boot",
    build: {
      units: "us",
      name: "Dunlin saloon: one bass amplifier in the boot",
      vehicle: {
        alternator: { ratedCurrent: "120 A" },
        batteries: [{ id: "battery", chemistry: "agm", capacity: "70 Ah" }],
      },
      amplifiers: [{ id: "bass", ratedOutput: "500 W", amplifierClass: "D" }],
      runs: [{ id: "feed", from: "battery", to: "bass", length: "17 ft" }],
    },
  },
  {
    title: "Two amplifiers, one block",
    build: {
      units: "us",
      name: "Kittiwake estate: bass and front from one main cable",
      vehicle: {
        alternator: { ratedCurrent: "150 A" },
        batteries: [{ id: "battery", chemistry: "agm", capacity: "80 Ah" }],
      },
      amplifiers: [
        { id: "bass", ratedOutput: "800 W", amplifierClass: "D" },
        { id: "front", ratedOutput: "300 W", amplifierClass: "AB" },
      ],
      runs: [
        { id: "main", from: "battery", to: "block", length: "16 ft" },
        { id: "bass-feed", from: "block", to: "bass", length: "3 ft" },
        { id: "front-feed", from: "block", to: "front", length: "4 ft" },
      ],
    },
  },
  {
    title: "A kit that is too thin",
    build: {
      units: "us",
      name: "Plover hatchback: 1000 W on a copper-clad kit",
      vehicle: {
        alternator: { ratedCurrent: "120 A" },
        batteries: [{ id: "battery", chemistry: "flooded", capacity: "60 Ah" }],
      },
      amplifiers: [{ id: "bass", ratedOutput: "1000 W", amplifierClass: "D" }],
      runs: [
        {
          id: "feed",
          from: "battery",
          to: "bass",
          length: "17 ft",
          conductor: { size: "4 AWG", material: "copper-clad-aluminium" },
          fuse: { rating: "150 A", family: "ANL", distanceFromSource: "24 in" },
        },
        {
          id: "ground",
          from: "bass",
          to: "body",
          length: "3 ft",
          conductor: { size: "4 AWG", material: "copper-clad-aluminium" },
        },
      ],
    },
  },
  {
    title: "Long van run, in metres",
    build: {
      units: "metric",
      name: "Cormorant van: 600 W at the rear doors",
      vehicle: {
        alternator: { ratedCurrent: "140 A" },
        batteries: [{ id: "battery", chemistry: "flooded", capacity: "95 Ah" }],
      },
      amplifiers: [{ id: "bass", ratedOutput: "600 W", amplifierClass: "D" }],
      runs: [
        {
          id: "feed",
          from: "battery",
          to: "bass",
          length: "8.5 m",
          route: "underbody",
        },
      ],
    },
  },
  {
    title: "Camper with a second battery",
    build: {
      units: "metric",
      name: "Curlew camper: music with the engine off",
      vehicle: {
        alternator: { ratedCurrent: "120 A" },
        batteries: [
          { id: "battery", chemistry: "agm", capacity: "70 Ah" },
          { id: "rear", chemistry: "lifepo4", capacity: "100 Ah" },
        ],
      },
      amplifiers: [{ id: "bass", ratedOutput: "400 W", amplifierClass: "D" }],
      runs: [
        {
          id: "charging",
          from: "battery",
          to: "rear",
          length: "5 m",
          isolator: { kind: "dc-dc-charger", ratedCurrent: "30 A" },
        },
        { id: "feed", from: "rear", to: "bass", length: "1 m", route: "cabin" },
        {
          id: "rear-strap",
          from: "rear",
          to: "body",
          length: "0.6 m",
          route: "cabin",
        },
      ],
      limits: { engineOffTime: "2 h" },
    },
  },
];
