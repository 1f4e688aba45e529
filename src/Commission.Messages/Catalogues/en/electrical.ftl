### Supply, motors, protection.

current-unbalance-next = Check the voltages first: one per cent of voltage unbalance makes several of current. With balanced voltages lock out, prove dead, and move all three leads on by one place (L1 to L2, L2 to L3, L3 to L1), never two of them: that keeps the rotation, and a scroll that runs backwards is soon destroyed. An unbalance that moves with the leads is in the supply or the contactor; one that stays with the winding is in the motor.
