"""Lines as a drafter of the trade types them out of drawings, schedules and name plates: the first fix of each problem,
in turn, makes the line that was meant (spellings: common practice, no source)."""

from __future__ import annotations

import pytest

from wyeline_grammar.lowering import lower_block
from wyeline_grammar.problems import Problem, Remedy

F = "feeder MSB -> LP-5 100 A 3p, "
P = "panel LP-9 208Y/120 bus 225 A, "
T = "transformer TX-9 480 3ph -> 208Y/120 75 kVA, "
BOARD = "panel LP-9 208Y/120  bus 225 A"

MEANT = [
    ("panel LP-5 208Y/120 225 A, main 100 A", "panel LP-5 208Y/120 bus 225 A, main 100 A"),
    ("panel LP-5 208Y/120 225 A, bus 100 A", "panel LP-5 208Y/120 main 225 A, bus 100 A"),
    ("panel LP-5 208Y/120 225 A", "panel LP-5 208Y/120 bus 225 A"),
    ("panel LP-5 208Y/120 100 A, 225 A", "panel LP-5 208Y/120 bus 100 A, main 225 A"),
    ("panel LP-5 208Y/120 225 A, main lugs", "panel LP-5 208Y/120 bus 225 A, main lugs"),
    ("  2 20 A 3pp 1 kVA lighting", "  2 20 A 3p 1 kVA lighting"),
    ("feeder MSB -> LP-5 100 A 3pp", "feeder MSB -> LP-5 100 A 3p"),
    ("panel LP-5 240V/120V bus 100 A", "panel LP-5 120/240 bus 100 A"),
    ("panel LP-5 120V/240V bus 100 A", "panel LP-5 120/240 bus 100 A"),
    ("panel LP-5 240/120V bus 100 A", "panel LP-5 120/240 bus 100 A"),
    ("panel LP-5 240/120 bus 100 A", "panel LP-5 120/240 bus 100 A"),
    ("panel LP-5 120/240 3ph bus 100 A", "panel LP-5 120/240 bus 100 A"),
    ("panel LP-5 480V bus 100 A", "panel LP-5 480 3ph bus 100 A"),
    ("panel LP-5 480 bus 100 A", "panel LP-5 480 3ph bus 100 A"),
    ("panel LP-5 208/120 bus 100 A", "panel LP-5 208Y/120 bus 100 A"),
    ("panel LP-5 208V/120V bus 100 A", "panel LP-5 208Y/120 bus 100 A"),
    ("panel LP-5 208Y/120 3P4W bus 100 A", "panel LP-5 208Y/120 bus 100 A"),
    ("panel LP-5 208Y/120 3Ø 4W bus 100 A", "panel LP-5 208Y/120 bus 100 A"),
    ("panel LP-5 208Y/120, 3ph, 4w bus 100 A", "panel LP-5 208Y/120 bus 100 A"),
    ("panel LP-5 208Y/120V, 3PH, 4W, 225A MCB, 42 circuits", "panel LP-5 208Y/120, main 225 A, spaces 42"),
    ("panel LP-5 208Y/120 1PH bus 100 A", "panel LP-5 208Y/120 1ph bus 100 A"),
    ("panel LP-5 120/240 1PH 3W bus 100 A", "panel LP-5 120/240 bus 100 A"),
    ("panel LP-5 120/240V, 1Ø, 3W bus 100 A", "panel LP-5 120/240 bus 100 A"),
    ("feeder MSB -> LP-5 100AF/70AT 3p", "feeder MSB -> LP-5 70 A 3p frame 100 A"),
    ("feeder MSB -> LP-5 100AF/70AT/3P", "feeder MSB -> LP-5 70 A 3p frame 100 A"),
    ("feeder MSB -> LP-5 100AF, 70AT, 3P", "feeder MSB -> LP-5 70 A 3p frame 100 A"),
    ("feeder MSB -> LP-5 100/70 3p", "feeder MSB -> LP-5 70 A 3p frame 100 A"),
    ("feeder MSB -> LP-5 70AT/100AF 3P", "feeder MSB -> LP-5 70 A 3p frame 100 A"),
    ("feeder MSB -> LP-5 100AF 70AT", "feeder MSB -> LP-5 70 A frame 100 A"),
    ("feeder MSB -> LP-5 100A-3P", "feeder MSB -> LP-5 100 A 3p"),
    ("feeder MSB -> LP-5 100A, 3P", "feeder MSB -> LP-5 100A, 3p"),
    ("feeder MSB -> LP-5 100A/3", "feeder MSB -> LP-5 100 A 3p"),
    ("feeder MSB -> LP-5 3P-100A", "feeder MSB -> LP-5 100 A 3p"),
    ("feeder MSB -> LP-5 3/100A", "feeder MSB -> LP-5 100 A 3p"),
    ("feeder MSB -> LP-5 100 A 3 pole", "feeder MSB -> LP-5 100 A 3p"),
    ("feeder MSB -> LP-5 100 A three-pole", "feeder MSB -> LP-5 100 A 3p"),
    ("feeder MSB -> LP-5 100A3P", "feeder MSB -> LP-5 100 A 3p"),
    (F + "(4) #10AWG Cu 20 m", F + "4#10 Cu 20 m"),
    (F + "4#10AWG Cu 20 m", F + "4#10 Cu 20 m"),
    (F + "4 #10 AWG Cu 20 m", F + "4#10 Cu 20 m"),
    (F + "4-10AWG Cu 20 m", F + "4#10 Cu 20 m"),
    (F + "4 10AWG Cu 20 m", F + "4#10 Cu 20 m"),
    (F + "4x10AWG Cu 20 m", F + "4#10 Cu 20 m"),
    (F + "4#10, #10 GND Cu 20 m", F + "4#10, + G #10 Cu 20 m"),
    (F + "4#10 & 1#10G Cu 20 m", F + "4#10 + G #10 Cu 20 m"),
    (F + '4#10, 1#10 G, 3/4"C', F + "4#10, + G #10, in 3/4 inch conduit"),
    (F + '4#10 + G #10 Cu, 3/4" C', F + "4#10 + G #10 Cu, in 3/4 inch conduit"),
    (F + '4#10 + G #10 Cu in 3/4"C', F + "4#10 + G #10 Cu in 3/4 inch conduit"),
    (F + '4#10 + G #10 Cu, 3/4" EMT', F + "4#10 + G #10 Cu, in 3/4 inch EMT"),
    (F + "4#10 + G #10 Cu, EMT 3/4", F + "4#10 + G #10 Cu, in 3/4 inch EMT"),
    (F + "4#10 + G #10 Cu in EMT 3/4", F + "4#10 + G #10 Cu in 3/4 inch EMT"),
    (F + '4#10 + G #10 Cu in EMT 3/4"', F + "4#10 + G #10 Cu in 3/4 inch EMT"),
    (F + "4#10 + G #10 Cu in 3/4 EMT", F + "4#10 + G #10 Cu in 3/4 inch EMT"),
    (F + "4#10 + G #10 Cu in 3/4 in. EMT", F + "4#10 + G #10 Cu in 3/4 inch EMT"),
    (F + "4#10 + G #10 Cu in 3/4-inch EMT", F + "4#10 + G #10 Cu in 3/4 inch EMT"),
    (F + "4#10 + G #10 Cu in EMT conduit", F + "4#10 + G #10 Cu in EMT"),
    (F + '4#10 + G #10 Cu in 2" PVC Sch 40', F + "4#10 + G #10 Cu in 2 inch PVC-40"),
    (F + "4#10 + G #10 Cu in 2 inch PVC sch 40", F + "4#10 + G #10 Cu in 2 inch PVC-40"),
    (F + "4#10 + G #10 Cu in 2 inch SCH40 PVC", F + "4#10 + G #10 Cu in 2 inch PVC-40"),
    (F + "4#10 + G #10 CU THHN 75C 20 m", F + "4#10 + G #10 Cu THHN lug-temp 75 degC 20 m"),
    (F + "4#10 + G #10 copper 20 m", F + "4#10 + G #10 Cu 20 m"),
    (F + "4#10 + G #10 alum 20 m", F + "4#10 + G #10 Al 20 m"),
    (F + "4#10 + G #10 Cu THHN/THWN 20 m", F + "4#10 + G #10 Cu THWN 20 m"),
    (F + "4#10 + G #10 Cu THHN/THWN-2 20 m", F + "4#10 + G #10 Cu THWN-2 20 m"),
    (F + "4#10 + G #10 Cu L=20 m", F + "4#10 + G #10 Cu 20 m"),
    (F + "4#10 + G #10 Cu 65'", F + "4#10 + G #10 Cu 65 ft"),
    (F + '4#10 + G #10 Cu 65\'-0"', F + "4#10 + G #10 Cu 65 ft"),
    (F + "4#10 + G #10 Cu 65 FT", F + "4#10 + G #10 Cu 65 ft"),
    (F + "4#10 w/ #10 G Cu 20 m", F + "4#10 + G #10 Cu 20 m"),
    (F + "4#10 w/G #10 Cu 20 m", F + "4#10 + G #10 Cu 20 m"),
    (F + "4#10 with G #10 Cu 20 m", F + "4#10 + G #10 Cu 20 m"),
    (F + "4#10 + GND #10 Cu 20 m", F + "4#10 + G #10 Cu 20 m"),
    (F + "3#10 + 1#10N + 1#10G Cu 20 m", F + "3#10 + N #10 + G #10 Cu 20 m"),
    (F + "3#10, 1#10N, 1#10G Cu 20 m", F + "3#10, + N #10, + G #10 Cu 20 m"),
    (F + "3#10, #10N, #10G Cu 20 m", F + "3#10, + N #10, + G #10 Cu 20 m"),
    (F + "(3)#1/0, (1)#6G Cu 20 m", F + "3#1/0, + G #6 Cu 20 m"),
    (F + "3/C #4 Cu 20 m", F + "3#4 Cu 20 m"),
    (F + "3C#4 Cu 20 m", F + "3#4 Cu 20 m"),
    (F + "2x(4#3/0) Cu 20 m", F + "2 sets 4#3/0 Cu 20 m"),
    (F + "2 sets of (4)#3/0 Cu 20 m", F + "2 sets 4#3/0 Cu 20 m"),
    (F + "(2) sets 4#3/0 Cu 20 m", F + "2 sets 4#3/0 Cu 20 m"),
    (F + "2-sets 4#3/0 Cu 20 m", F + "2 sets 4#3/0 Cu 20 m"),
    (F + "2x 4#3/0 Cu 20 m", F + "2 sets 4#3/0 Cu 20 m"),
    (F + "4#000 Cu 20 m", F + "4#3/0 Cu 20 m"),
    (F + "4#0000 Cu 20 m", F + "4#4/0 Cu 20 m"),
    (F + "4 x 3/0 Cu 20 m", F + "4#3/0 Cu 20 m"),
    (F + "3-500 Cu 20 m", F + "3x500kcmil Cu 20 m"),
    (F + "3-500kcmil Cu 20 m", F + "3x500kcmil Cu 20 m"),
    (F + "3 500MCM Cu 20 m", F + "3x500kcmil Cu 20 m"),
    ("panel LP-5 208Y/120 bus 225 A, main 100 A, 65kAIC", "panel LP-5 208Y/120 bus 225 A, main 100 A, rated 65 kA"),
    ("panel LP-5 208Y/120 bus 225 A, main 100 A, 65 kAIC", "panel LP-5 208Y/120 bus 225 A, main 100 A, rated 65 kA"),
    ("panel LP-5 208Y/120 bus 225 A, main 100 A, 65KAIC", "panel LP-5 208Y/120 bus 225 A, main 100 A, rated 65 kA"),
    ("panel LP-5 208Y/120 bus 225 A, main 100 A, 10,000 AIC", "panel LP-5 208Y/120 bus 225 A, main 100 A, rated 10 kA"),
    ("panel LP-5 208Y/120 bus 225 A, main 100 A, 10kA", "panel LP-5 208Y/120 bus 225 A, main 100 A, rated 10kA"),
    ("panel LP-5 208Y/120 bus 225 A, main 100 A, 65 kA SCCR", "panel LP-5 208Y/120 bus 225 A, main 100 A, rated 65 kA"),
    ("panel LP-5 208Y/120 bus 225 A, main 100 A, SCCR 65 kA", "panel LP-5 208Y/120 bus 225 A, main 100 A, rated 65 kA"),
    ("panel LP-5 208Y/120 bus 225 A, main 100 A, AIC 10,000", "panel LP-5 208Y/120 bus 225 A, main 100 A, rated 10 kA"),
    ("panel LP-5 208Y/120 bus 225 A, MCB", "panel LP-5 208Y/120 bus 225 A, main 225 A"),
    ("panel LP-5 208Y/120 bus 225 A, 100A MCB", "panel LP-5 208Y/120 bus 225 A, main 100 A"),
    ("panel LP-5 208Y/120 bus 225 A, MCB 100", "panel LP-5 208Y/120 bus 225 A, main 100 A"),
    ("panel LP-5 208Y/120 bus 225 A, main breaker 100 A", "panel LP-5 208Y/120 bus 225 A, main 100 A"),
    ("panel LP-5 208Y/120 225A bus, 100A main", "panel LP-5 208Y/120 bus 225A, main 100A"),
    ("panel LP-5 208Y/120 225A MLO", "panel LP-5 208Y/120 bus 225A main lugs"),
    ("panel LP-5 208Y/120 MLO, 225A", "panel LP-5 208Y/120 main lugs, bus 225A"),
    ("panel LP-5 208Y/120 M.L.O. 225A", "panel LP-5 208Y/120 main lugs bus 225A"),
    ("panel LP-5 208Y/120 bus 225 A, main lugs only", "panel LP-5 208Y/120 bus 225 A, main lugs"),
    ("panel LP-5 208Y/120 bus 225 A, lugs only", "panel LP-5 208Y/120 bus 225 A, main lugs"),
    ("panel LP-5 208Y/120 bus 225 A, NEMA 3R", 'panel LP-5 208Y/120 bus 225 A, note "NEMA 3R"'),
    ("panel LP-5 208Y/120 bus 225 A, NEMA 1, surface", 'panel LP-5 208Y/120 bus 225 A, note "NEMA 1, surface"'),
    ("panel LP-5 208Y/120 bus 225 A, IP54", 'panel LP-5 208Y/120 bus 225 A, note "IP54"'),
    ("panel LP-5 208Y/120 bus 225 A, flush mounted", 'panel LP-5 208Y/120 bus 225 A, note "flush mounted"'),
    ("panel LP-5 208Y/120 bus 225 A, 42 ckt", "panel LP-5 208Y/120 bus 225 A, spaces 42"),
    ("panel LP-5 208Y/120 bus 225 A, 42ckts", "panel LP-5 208Y/120 bus 225 A, spaces 42"),
    ("panel LP-5 208Y/120 bus 225 A, 42 spaces", "panel LP-5 208Y/120 bus 225 A, spaces 42"),
    ("panel LP-5 208Y/120 bus 225 A, 42 poles", "panel LP-5 208Y/120 bus 225 A, spaces 42"),
    ("panel LP-5 208Y/120 bus 225 A, 42-pole", "panel LP-5 208Y/120 bus 225 A, spaces 42"),
    ("transformer TX-9 480 3ph -> 208Y/120 75 kva", "transformer TX-9 480 3ph -> 208Y/120 75 kVA"),
    ("transformer TX-9 480 3ph -> 208Y/120 75KVA", "transformer TX-9 480 3ph -> 208Y/120 75 kVA"),
    ("transformer TX-9 480 3ph -> 208Y/120 75kVa, Z=5.75%", "transformer TX-9 480 3ph -> 208Y/120 75 kVA, z 5.75%"),
    (T + "5.75%Z", T + "z 5.75 %"),
    (T + "5.75% Z", T + "z 5.75 %"),
    (T + "%Z=5.75", T + "z 5.75 %"),
    (T + "%Z 5.75", T + "z 5.75 %"),
    (T + "Z 5.75", T + "z 5.75 %"),
    (T + "z 5.75", T + "z 5.75 %"),
    (T + "impedance 5.75 %", T + "z 5.75 %"),
    (T + "X/R=6", T + "x/r 6"),
    (T + "X/R 6", T + "x/r 6"),
    ("transformer TX-9 480V -> 208Y/120V 75 kVA", "transformer TX-9 480 3ph -> 208Y/120 75 kVA"),
    ("transformer TX-9 480V-208Y/120V 75 kVA", "transformer TX-9 480 3ph -> 208Y/120 75 kVA"),
    ("transformer TX-9 480V to 208Y/120V 75 kVA", "transformer TX-9 480 3ph -> 208Y/120 75 kVA"),
    ("transformer TX-9 480V/208V 75 kVA", "transformer TX-9 480 3ph -> 208Y/120 75 kVA"),
    ("transformer TX-9 480/208 75 kVA", "transformer TX-9 480 3ph 75 kVA"),
    ("transformer TX-9 480D-208Y/120 75 kVA", "transformer TX-9 480 3ph -> 208Y/120 75 kVA"),
    ("transformer TX-9 480Δ-208Y/120 75 kVA", "transformer TX-9 480 3ph -> 208Y/120 75 kVA"),
    ("transformer TX-9 480 delta -> 208Y/120 75 kVA", "transformer TX-9 480 3ph -> 208Y/120 75 kVA"),
    ("transformer TX-9 480V delta 208Y/120V wye 75 kVA", "transformer TX-9 480 3ph -> 208Y/120 75 kVA"),
    ("transformer TX-9 75 kVA 480 3ph -> 208Y/120", "transformer TX-9 480 3ph -> 208Y/120  75 kVA"),
    ("transformer TX-9 75 kVA, 480 3ph -> 208Y/120", "transformer TX-9 480 3ph -> 208Y/120  75 kVA"),
    ("transformer TX-9 480 3ph -> 208Y/120 112,5 kVA", "transformer TX-9 480 3ph -> 208Y/120 112.5 kVA"),
    (T + "K-13", T + "kfactor 13"),
    (T + "150C rise", T + "rise 150 degC"),
    (T + "150°C rise", T + "rise 150 degC"),
    (T + "rise 150C", T + "rise 150 degC"),
    (T + "rise 150 deg C", T + "rise 150 degC"),
    (T + "rise 150 degrees", T + "rise 150 degC"),
    (T + "dry type", T + 'note "dry type"'),
    (T + "dry-type", T + 'note "dry-type"'),
    (T + "Dyn11", T + "connection Dyn11"),
    (P + "ambient 35C", P + "ambient 35 degC"),
    (P + "lug-temp 75C", P + "lug-temp 75 degC"),
    (P + "lugs 75C", P + "lug-temp 75 degC"),
    (P + "75C lugs", P + "lug-temp 75 degC"),
    (P + "75 C", P + "lug-temp 75 degC"),
    ("panel LP-9 208Y/120 bus 225amps", "panel LP-9 208Y/120 bus 225 A"),
    ("panel LP-9 208Y/120 bus 225 Amp", "panel LP-9 208Y/120 bus 225 A"),
    ("panel LP-9 208Y/120 bus 225a", "panel LP-9 208Y/120 bus 225 A"),
    ("panel LP-9 208Y/120 bus: 225 A", "panel LP-9 208Y/120 bus 225 A"),
    ("panel LP-9 208Y/120 bus = 225 A", "panel LP-9 208Y/120 bus 225 A"),
    ("panel LP-9 208Y/120 bus=225A", "panel LP-9 208Y/120 bus 225A"),
    ("panel LP-9 208Y/120 225 A bus", "panel LP-9 208Y/120 bus 225 A"),
    ("panel LP-9 208Y/120 225A bus, 150A main", "panel LP-9 208Y/120 bus 225A, main 150A"),
    ("panel LP-9 208Y/120 225A, 150A MCB", "panel LP-9 208Y/120 bus 225A, main 150 A"),
    ("panel LP-9 208Y/120 bus 225 A; main 100 A", "panel LP-9 208Y/120 bus 225 A, main 100 A"),
    ("panel LP-9 208Y/120 bus 225 A / main 100 A", "panel LP-9 208Y/120 bus 225 A, main 100 A"),
    ("panel LP-9 208Y/120 bus 225 A & main 100 A", "panel LP-9 208Y/120 bus 225 A, main 100 A"),
    ("panel LP-9 208Y/120 bus 225 A and main 100 A", "panel LP-9 208Y/120 bus 225 A, main 100 A"),
    (P + '"Corridor" level 2', P + '"Corridor" location "level 2"'),
    (P + "location corridor", P + 'location "corridor"'),
    (P + "location Room 12", P + 'location "Room 12"'),
    (P + "Room 12", P + 'location "Room 12"'),
    ("panel LP-9 208Y/120 bus 225 A – existing", "panel LP-9 208Y/120 bus 225 A, existing"),
    (P + "(existing)", P + "existing"),
    (P + "(E)", P + "existing"),
    (P + "EXISTING", P + "existing"),
    (P + "Existing", P + "existing"),
    (P + "to be demolished", P + "demolish"),
    (P + "main 100A/3P", P + "main 100 A 3p"),
    (P + "main 100 A 3P", P + "main 100 A 3p"),
    (P + "main 3P 100 A", P + "main 100 A 3p"),
    (P + "main 100/3", P + "main 100 A 3p"),
    ("panel “LP-9” 208Y/120 bus 225 A", 'panel "LP-9" 208Y/120 bus 225 A'),
    ("panel ‘LP 9’ 208Y/120 bus 225 A", 'panel "LP 9" 208Y/120 bus 225 A'),
    ("panel LP–9 208Y/120 bus 225 A", "panel LP-9 208Y/120 bus 225 A"),
    ("panel LP—9 208Y/120 bus 225 A", "panel LP-9 208Y/120 bus 225 A"),
    ("panel LP/9 208Y/120 bus 225 A", "panel LP-9 208Y/120 bus 225 A"),
    ("panel LP 9 208Y/120 bus 225 A", "panel LP-9 208Y/120 bus 225 A"),
    ("panel LP#9 208Y/120 bus 225 A", "panel LP-9 208Y/120 bus 225 A"),
    ("panel LP-9 (new) 208Y/120 bus 225 A", "panel LP-9 208Y/120  new bus 225 A"),
    ("panel LP-9 - 208Y/120 bus 225 A", "panel LP-9, 208Y/120 bus 225 A"),
    ("panel LP-9 480Y277 bus 225 A", "panel LP-9 480Y/277 bus 225 A"),
    ("panel LP-9 480-277 bus 225 A", "panel LP-9 480Y/277 bus 225 A"),
    ("panel LP-9 480Y/277VAC bus 225 A", "panel LP-9 480Y/277 bus 225 A"),
    ("panel LP-9 480Y/277 VAC bus 225 A", "panel LP-9 480Y/277 bus 225 A"),
    ("panel LP-9 480/277V bus 225 A", "panel LP-9 480Y/277 bus 225 A"),
    ("panel LP-9 480y/277 bus 225 A", "panel LP-9 480Y/277 bus 225 A"),
    ("panel LP-9 480Y/277V, 3-phase, 4-wire bus 225 A", "panel LP-9 480Y/277 bus 225 A"),
    ("panel LP-9 480Y/277V 3-phase 4-wire bus 225 A", "panel LP-9 480Y/277 bus 225 A"),
    ("panel LP-9 480Y/277V, 3 phase, 4 wire bus 225 A", "panel LP-9 480Y/277 bus 225 A"),
    ("panel LP-9 480Y/277V, 3φ, 4W bus 225 A", "panel LP-9 480Y/277 bus 225 A"),
    ("panel LP-9 480V 3P 3W bus 225 A", "panel LP-9 480 3ph bus 225 A"),
    ("panel LP-9 480VAC 3ph bus 225 A", "panel LP-9 480 3ph bus 225 A"),
    ("panel LP-9 480 volts 3ph bus 225 A", "panel LP-9 480 3ph bus 225 A"),
    ("panel LP-9 480 three-phase bus 225 A", "panel LP-9 480 3ph bus 225 A"),
    ("panel LP-9 120/240V single phase bus 225 A", "panel LP-9 120/240 bus 225 A"),
    ("panel LP-9 120/240 1Φ3W bus 225 A", "panel LP-9 120/240 bus 225 A"),
    ("panel LP-9 120/240V-1PH-3W bus 225 A", "panel LP-9 120/240 bus 225 A"),
    ("panel LP-9 208Y/120V-3PH-4W bus 225 A", "panel LP-9 208Y/120 bus 225 A"),
    ("panel LP-9 240/120 delta bus 225 A", "panel LP-9 240/120 3ph bus 225 A"),
    ("panel LP-9 400/230 bus 225 A", "panel LP-9 400Y/230 bus 225 A"),
    ("panel LP-9 400V 3N~ bus 225 A", "panel LP-9 400Y/230 bus 225 A"),
    ("panel LP-9 3N~ 400V bus 225 A", "panel LP-9 400Y/230 bus 225 A"),
    ("panel LP-9 230V 1N~ bus 225 A", "panel LP-9 230 1ph bus 225 A"),
    ("panel LP-9 230V~ bus 225 A", "panel LP-9 230 1ph bus 225 A"),
    ("panel LP-9 400 V bus 225 A", "panel LP-9 400 3ph bus 225 A"),
    ("panel LP-9 480VAC bus 225 A", "panel LP-9 480 3ph bus 225 A"),
    ("panel LP-9 208Y/120V 3P4W bus 225 A", "panel LP-9 208Y/120 bus 225 A"),
    ("panel LP-9 208Y/120 3P4W bus 225 A", "panel LP-9 208Y/120 bus 225 A"),
    ("panel LP-9 240/120V 3PH 4W delta bus 225 A", "panel LP-9 240/120 3ph bus 225 A"),
    ("motor M-9 460V/3PH 10 hp", "motor M-9 460 3ph 10 hp"),
    ("motor M-9 460V/3/60 10 hp", "motor M-9 460 3ph 10 hp"),
    ("motor M-9 460/3/60 10 hp", "motor M-9 460 3ph 10 hp"),
    ("motor M-9 208-230V/3PH 10 hp", "motor M-9 208-230 3ph 10 hp"),
    ("motor M-9 208-230/460V 3PH 10 hp", "motor M-9 460 3ph 10 hp"),
    ("motor M-9 230/460V 3PH 10 hp", "motor M-9 460 3ph 10 hp"),
    ("motor M-9 460-3-60 10 hp", "motor M-9 460 3ph 10 hp"),
    ("load EV-9 208V 1PH 7.2 kW", "load EV-9 208 1ph 7.2 kW"),
    ("load EV-9 208/1/60 7.2 kW", "load EV-9 208 1ph 7.2 kW"),
    ("load EV-9 240V 1-phase 7.2 kW", "load EV-9 240 1ph 7.2 kW"),
    ("utility GRID 12,470V fault 10 kA", "utility GRID 12470 3ph fault 10 kA"),
    ("utility GRID 13.8 kV delta fault 10 kA", "utility GRID 13.8 kV 3ph fault 10 kA"),
    (F + "3#3 + G #8 CU THHN  20 m", F + "3#3 + G #8 Cu THHN  20 m"),
    (F + "3#3 + G #8 Cu THHN 75C  20 m", F + "3#3 + G #8 Cu THHN lug-temp 75 degC  20 m"),
    (F + "3#3 + G #8 AWG  20 m", F + "3#3 + G #8   20 m"),
    (F + "4#10 + G #10 Cu THHN 75°C 20 m", F + "4#10 + G #10 Cu THHN lug-temp 75degC 20 m"),
]  # fmt: skip


def problems(text: str) -> tuple[Problem, ...]:
    lines = (BOARD, text) if text.startswith(" ") else (text,)
    return lower_block(lines).problems


def mended(text: str, remedy: Remedy) -> str:
    for edit in sorted(remedy.edits, key=lambda e: e.start, reverse=True):
        text = text[: edit.start] + edit.text + text[edit.end :]
    return text


@pytest.mark.parametrize(("written", "meant"), MEANT, ids=lambda text: text)
def test_the_first_fixes_make_the_line_that_was_meant(written: str, meant: str) -> None:
    assert problems(written) and not problems(meant)
    text = written
    for _ in range(5):
        found = problems(text)
        if not found:
            break
        assert found[0].change and "\n" not in found[0].message
        text = mended(text, found[0].remedies[0])
    assert text.rstrip() == meant


# What is right as it stands, though it looks like a slip.
SOUND = [
    "panel LP-9 120/208 bus 100 A",
    "panel LP-9 120/240V bus 100 A",
    "panel LP-9 277/480V bus 100 A",
    "utility GRID 12.47Y/7.2kV fault 10 kA",
    "motor M-9 208-230 3ph 10 hp",
    "panel LP-9\t208Y/120\tbus 225 A",
    "panel LP-9\u00a0208Y/120\u00a0 bus\u00a0225\u00a0A",
    T + "rise 150 °C",
    "transformer TX-9 480 3ph → 208Y/120 75 kVA",
    P + "main 200 A 3p, rated 22 kA, note \"NEMA 3R, surface\"",
    F + "2 sets 3x500kcmil + N 500kcmil + G #3/0 Cu XHHW-2 30 m in 3 inch PVC-40",
    F + "3#3 + N #3 + G #8 Cu MC 30 m",
    "system S400 400Y/230",
]  # fmt: skip


@pytest.mark.parametrize("text", SOUND)
def test_what_is_sound_is_left_alone(text: str) -> None:
    assert problems(text) == ()


@pytest.mark.parametrize(
    ("text", "offered"),
    [
        ("panel LP-9 240V/120V bus 100 A", ["120/240", "240/120 3ph"]),
        ("motor M-9 230/460V 3PH 10 hp", ["460 3ph", "230 3ph"]),
        ("panel LP-9 230VAC bus 100 A", ["230 1ph", "230 3ph"]),
        (F + "3#3 + G #8 Cu THHN/THWN 20 m", ["THWN", "THHN"]),
        (T + "rise 150 degrees", ["rise 150 degC", "rise 150 degF"]),
        (P + "MCB", ["main 225 A"]),
        (P + "(E)", ["existing"]),
        ("panel LP/9 208Y/120", ["LP-9", '"LP/9"']),
    ],
)
def test_what_may_mean_something_else_is_no_sure_fix(text: str, offered: list[str]) -> None:
    (problem,) = problems(text)
    assert [remedy.edits[0].text for remedy in problem.remedies] == offered
    assert not any(remedy.sure for remedy in problem.remedies)


def test_a_key_that_has_its_value_is_not_offered_for_another() -> None:
    def offered(text: str) -> list[str]:
        (problem,) = problems(text)
        for key in ("bus", "main", "incomer", "frame"):
            assert (f"`{key} 225 A`" in problem.message) == any(key in r.title for r in problem.remedies)
        return [remedy.edits[0].text.split()[0] for remedy in problem.remedies]

    assert offered("panel LP-9 208Y/120 225 A") == ["bus", "main", "incomer", "frame"]
    assert offered("panel LP-9 208Y/120 225 A, main 100 A") == ["bus", "frame"]
    assert offered("panel LP-9 208Y/120 225 A, bus 400 A") == ["main", "incomer", "frame"]
