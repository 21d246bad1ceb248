! first
[Version] 2.0
#	Hz S DB R 75
[Number of Ports] 3
[Number of Frequencies] 1
[Matrix Format] Upper
[Network Data]
1000 -10 10 -20 20 -30 30
-11 -170 -21 170
-12 -90
[End]
