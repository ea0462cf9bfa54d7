// Chance that can be repeated: everything a run does follows from its seed.
export class Chance {
  constructor(seed) {
    this.state = seed >>> 0;
  }

  // mulberry32; a number from 0 to below 1.
  next() {
    this.state = (this.state + 0x6d2b79f5) >>> 0;
    let t = this.state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  }

  below(n) {
    return Math.floor(this.next() * n);
  }

  one(list) {
    return list[this.below(list.length)];
  }

  is(share) {
    return this.next() < share;
  }
}
