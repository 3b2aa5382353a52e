# Our own file under the empty twin's names.
file(READ ${FROM} text)
string(REPLACE "hearthcell.XStove" "hearthempty.XStove" text "${text}")
string(REPLACE "module hearthcell" "module hearthempty" text "${text}")
string(REPLACE "hearthcell.Stove" "hearthempty.Stove" text "${text}")
string(REPLACE "STOVE." "EMPTY." text "${text}")
file(WRITE ${TO} "${text}")
