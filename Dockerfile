FROM mcr.microsoft.com/dotnet/sdk:10.0 AS build
WORKDIR /source
# What decides the packages comes first: a change of source or data leaves this layer as it is.
COPY global.json Directory.Build.props Directory.Packages.props ./
COPY src/ConeService.Data/ConeService.Data.csproj src/ConeService.Data/
COPY src/ConeService.Firing/ConeService.Firing.csproj src/ConeService.Firing/
COPY src/ConeService.Api/ConeService.Api.csproj src/ConeService.Api/
RUN dotnet restore src/ConeService.Api
# The data package is embedded, so the image needs no data beside the assemblies.
COPY .editorconfig BannedSymbols.txt ./
COPY data data
COPY src src
# The OpenAPI document is committed and checked by the gate; the image serves its own.
RUN dotnet publish src/ConeService.Api -c Release --no-restore -o /app -p:OpenApiGenerateDocuments=false -p:UseAppHost=false

FROM mcr.microsoft.com/dotnet/aspnet:10.0
WORKDIR /app
COPY --from=build /app .
ENV ASPNETCORE_HTTP_PORTS=8080
EXPOSE 8080
USER $APP_UID
# The image has no curl: the host asks itself.
HEALTHCHECK --interval=30s --timeout=5s --start-period=10s CMD ["dotnet", "ConeService.Api.dll", "probe"]
ENTRYPOINT ["dotnet", "ConeService.Api.dll"]
