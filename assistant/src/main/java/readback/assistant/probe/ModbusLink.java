package readback.assistant.probe;

import com.ghgande.j2mod.modbus.Modbus;
import com.ghgande.j2mod.modbus.ModbusException;
import com.ghgande.j2mod.modbus.ModbusIOException;
import com.ghgande.j2mod.modbus.facade.AbstractModbusMaster;
import com.ghgande.j2mod.modbus.facade.ModbusSerialMaster;
import com.ghgande.j2mod.modbus.facade.ModbusTCPMaster;
import com.ghgande.j2mod.modbus.procimg.InputRegister;
import com.ghgande.j2mod.modbus.util.SerialParameters;
import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.LongSupplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Registers of Modbus units on one wire, read once a second. Never writes. */
final class ModbusLink implements Link {

    private static final Duration BETWEEN = Duration.ofSeconds(1);

    /** An answer comes within this time or not at all. */
    private static final Duration PATIENCE = Duration.ofMillis(1500);

    private final Wire wire;
    private final List<Channel> channels;
    private final BiConsumer<Channel, ProbeSample> samples;
    private final LongSupplier nanoTime;
    private final Duration between;
    private volatile @Nullable AbstractModbusMaster master;

    ModbusLink(Wire wire, List<Channel> channels, BiConsumer<Channel, ProbeSample> samples, LongSupplier nanoTime) {
        this(wire, channels, samples, nanoTime, BETWEEN);
    }

    ModbusLink(
            Wire wire,
            List<Channel> channels,
            BiConsumer<Channel, ProbeSample> samples,
            LongSupplier nanoTime,
            Duration between) {
        this.wire = wire;
        this.channels = List.copyOf(channels);
        this.samples = samples;
        this.nanoTime = nanoTime;
        this.between = between;
    }

    @Override
    public void open() throws IOException {
        AbstractModbusMaster opened = null;
        try {
            opened = made();
            opened.connect();
            opened.setRetries(0);
            master = opened;
        } catch (Exception e) {
            // the library throws whatever the connection threw
            if (opened != null) {
                opened.disconnect();
            }
            throw new IOException("no connection to " + wire.name() + ": " + e.getMessage(), e);
        }
    }

    private AbstractModbusMaster made() {
        return wire.fold(
                lent -> {
                    throw new IllegalStateException("registers are not read from " + lent.name());
                },
                tcp -> new ModbusTCPMaster(tcp.host(), tcp.port(), (int) PATIENCE.toMillis(), false, false),
                ModbusLink::overSerial);
    }

    private static AbstractModbusMaster overSerial(Wire.Serial serial) {
        SerialParameters parameters = new SerialParameters();
        parameters.setPortName(serial.port());
        parameters.setBaudRate(serial.baud());
        parameters.setDatabits(serial.dataBits());
        parameters.setParity(SerialPorts.parity(serial));
        parameters.setStopbits(SerialPorts.stopBits(serial));
        parameters.setEncoding(Modbus.SERIAL_ENCODING_RTU);
        parameters.setEcho(false);
        return new ModbusSerialMaster(parameters, (int) PATIENCE.toMillis());
    }

    @Override
    public void next() throws IOException {
        for (Channel channel : channels) {
            read(channel);
        }
        try {
            Thread.sleep(between.toMillis());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("the reading was stopped", e);
        }
    }

    private void read(Channel channel) throws IOException {
        AbstractModbusMaster open = master;
        if (open == null) {
            throw new IOException("the connection to " + wire.name() + " was closed");
        }
        Place.Registers place = (Place.Registers) channel.place();
        try {
            int count = place.format().type().registers();
            InputRegister[] answer = place.holding()
                    ? open.readMultipleRegisters(place.unitId(), place.address(), count)
                    : open.readInputRegisters(place.unitId(), place.address(), count);
            int[] registers =
                    Stream.of(answer).mapToInt(InputRegister::toUnsignedShort).toArray();
            samples.accept(channel, sample(channel, place.format(), registers));
        } catch (ModbusIOException e) {
            throw new IOException("no answer from " + wire.name() + ": " + e.getMessage(), e);
        } catch (ModbusException refused) {
            // the unit answered that it has no such register: there is no value, which is told as one that is late
        }
    }

    private ProbeSample sample(Channel channel, RegisterFormat format, int... registers) {
        RawUnit unit = channel.unit().orElseThrow();
        double number = format.number(registers);
        String raw = RegisterFormat.written(registers) + " = " + channel.raw(Double.toString(number), unit);
        return new ProbeSample(unit.base(number), raw, nanoTime.getAsLong());
    }

    @Override
    public void close() {
        AbstractModbusMaster open = master;
        master = null;
        if (open != null) {
            open.disconnect();
        }
    }
}
